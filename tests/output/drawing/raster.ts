/**
 * Looks at drawings with programs that are not ours: an XML parser that forgives nothing, and a rasteriser.
 */
import { Resvg } from "@resvg/resvg-js";
import { DOMParser, type Document, type Element, onErrorStopParsing, XMLSerializer } from "@xmldom/xmldom";

/** The parsed document; throws where it is no well-formed XML. */
export function parseSvg(svg: string): Document {
  return new DOMParser({ onError: onErrorStopParsing }).parseFromString(svg, "image/svg+xml");
}

/** Elements of a class. */
export function ofClass(document: Document, name: string): Element[] {
  const all = [...document.getElementsByTagName("*")];
  return all.filter((one) => one.getAttribute("class")?.split(" ").includes(name));
}

/** Length and height of the sheet, mm, from the root's attributes; they must agree with the view box. */
export function sheetSize(document: Document): { width: number; height: number } {
  const root = document.documentElement as Element;
  const [width, height] = ["width", "height"].map((name) => root.getAttribute(name) as string);
  const size = { width: Number.parseFloat(width), height: Number.parseFloat(height) };
  if (width !== `${size.width}mm` || height !== `${size.height}mm`) throw new Error(`no mm: ${width}, ${height}`);
  if (root.getAttribute("viewBox") !== `0 0 ${size.width} ${size.height}`) throw new Error("the unit is not a mm");
  return size;
}

/** The drawing with nothing but the elements of a class (and what is in them), and without strokes. */
export function onlyClass(svg: string, name: string): string {
  const document = parseSvg(svg);
  const kept = new Set<unknown>();
  for (const element of ofClass(document, name)) {
    for (const inner of [element, ...element.getElementsByTagName("*")]) kept.add(inner);
    for (let up = element.parentNode; up !== null; up = up.parentNode) kept.add(up);
  }
  for (const element of [...document.getElementsByTagName("*")]) {
    if (!kept.has(element)) element.parentNode?.removeChild(element);
    else element.setAttribute("stroke", "none");
  }
  return new XMLSerializer().serializeToString(document);
}

/** A part of the sheet, mm. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Covered area, mm², and the box round it of what is drawn on a clear sheet: found coarsely, then measured closely. */
export function covered(svg: string, zoom: number): { readonly area: number; readonly box: Box } {
  const { width, height } = sheetSize(parseSvg(svg));
  const { box } = measure(svg, { left: 0, right: width, top: 0, bottom: height }, COARSE, 1);
  const room = { left: box.left - 1, right: box.right + 1, top: box.top - 1, bottom: box.bottom + 1 };
  return measure(svg, room, zoom, HALF_COVERED);
}

/** Pixels a millimetre at which everything is looked over. */
const COARSE = 4;

/** Opacity, of 255, from which a pixel counts as within the box. */
const HALF_COVERED = 128;

function measure(svg: string, window: Box, zoom: number, least: number) {
  const [w, h] = [window.right - window.left, window.bottom - window.top];
  const view = `width="${w}mm" height="${h}mm" viewBox="${window.left} ${window.top} ${w} ${h}"`;
  const cut = svg.replace(/width="[^"]*mm" height="[^"]*mm" viewBox="[^"]*"/, view);
  const { pixels, width, height } = new Resvg(cut, { fitTo: { mode: "width", value: Math.round(w * zoom) } }).render();
  const scale = width / w;
  const box = { left: width, right: 0, top: height, bottom: 0 };
  let sum = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const alpha = pixels[4 * (y * width + x) + 3];
      if (alpha === 0) continue;
      sum += alpha / 255;
      if (alpha < least) continue;
      box.left = Math.min(box.left, x);
      box.right = Math.max(box.right, x + 1);
      box.top = Math.min(box.top, y);
      box.bottom = Math.max(box.bottom, y + 1);
    }
  }
  return {
    area: sum / scale ** 2,
    box: {
      left: window.left + box.left / scale,
      right: window.left + box.right / scale,
      top: window.top + box.top / scale,
      bottom: window.top + box.bottom / scale,
    },
  };
}
