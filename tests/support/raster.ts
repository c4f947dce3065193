/** Pictures by resvg, which is not ours, and how far two of them agree. */
import { Resvg } from "@resvg/resvg-js";
import { FONTS, type FontName, pathOf } from "./fonts.js";

/** How far each pixel is covered, 0 to 255. */
export interface Raster {
  readonly width: number;
  readonly alpha: Uint8Array;
}

/** A box in mm, y down. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Pixels in a mm; default 60. */
  readonly fineness?: number;
}

/** Pixels in a mm. */
const FINENESS = 60;

/** Draws the inside of an SVG document, in mm. */
export function raster(inside: string, frame: Frame, fonts: readonly FontName[] = []): Raster {
  const fitTo = { mode: "zoom", value: frame.fineness ?? FINENESS } as const;
  const image = new Resvg(documentOf(inside, frame), { fitTo, ...fontOptions(fonts) }).render();
  const { pixels } = image;
  return { width: image.width, alpha: Uint8Array.from({ length: pixels.length / 4 }, (_, i) => pixels[4 * i + 3]) };
}

function documentOf(inside: string, { x, y, width, height }: Frame): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${width} ${height}" width="${width}" height="${height}">${inside}</svg>`;
}

function fontOptions(fonts: readonly FontName[]) {
  return { font: { fontFiles: fonts.map(pathOf), loadSystemFonts: false } };
}

/** A text as resvg sets it: base line at y 0, from x 0, with capitals `height` mm high. */
export function textElement(text: string, font: FontName, size: number): string {
  const { family, weight } = FONTS[font];
  return `<text font-family="${family}" font-weight="${weight}" font-size="${size}" x="0" y="0">${text}</text>`;
}

/** The centre of gravity of what is painted, mm: exact far below a pixel, since edges count by their share. */
export function centreOf({ width, alpha }: Raster, { x, y, fineness = FINENESS }: Frame): readonly [number, number] {
  let [sum, across, down] = [0, 0, 0];
  alpha.forEach((share, i) => {
    sum += share;
    across += share * (i % width);
    down += share * Math.floor(i / width);
  });
  return [x + (across / sum + 0.5) / fineness, y + (down / sum + 0.5) / fineness];
}

/** What both cover by more than half over what either does. */
export function overlap(a: Raster, b: Raster): number {
  let [both, either] = [0, 0];
  a.alpha.forEach((share, i) => {
    const [inA, inB] = [share > 127, b.alpha[i] > 127];
    if (inA && inB) both++;
    if (inA || inB) either++;
  });
  return both / either;
}
