/** Drawings for the tests of SVG files, and their areas by resvg. */
import { Resvg } from "@resvg/resvg-js";
import type { Drawing } from "../../../src/art/svg/drawing.js";
import { outlineDrawing } from "../../../src/art/svg/outline-drawing.js";
import { placeDrawing } from "../../../src/art/svg/place-drawing.js";
import { readSvg } from "../../../src/art/svg/read-svg.js";
import type { Warning } from "../../../src/base/errors.js";
import { ringArea } from "../../../src/flat/polygons.js";

/** A file 100 wide and high with the given content. */
export function svg(content: string, attributes = 'width="100" height="100"'): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${content}</svg>`;
}

/** Area in px² of what a file's page shows, outlined as if a px were 0.1 mm, and its warnings. */
export function importSvg(text: string) {
  const warnings: Warning[] = [];
  const drawing = readSvg(text, "test.svg", "svg", (warning) => warnings.push(warning));
  const page = drawing.page ?? { x: 0, y: 0, width: 100, height: 100 };
  const size = { width: page.width / 10, height: page.height / 10 };
  const place = placeDrawing(undefined, page, { unit: "mm", ...size, aspect: 1 });
  const { region, cleaned } = outlineDrawing(drawing, { place, scale: 1e6, tolerance: 1e-4, where: "svg" });
  const area = region.reduce((sum, ring) => sum + ringArea(ring), 0) / 1e10;
  return { area, region, cleaned, warnings, codes: warnings.map(({ code }) => code), drawing };
}

/** Area in px² of a drawing on a page of 100 × 100 px, as `importSvg` measures it. */
export function areaOfDrawing(drawing: Drawing): number {
  const place = placeDrawing(undefined, { x: 0, y: 0, width: 100, height: 100 }, PAGE_TILE);
  const { region } = outlineDrawing(drawing, { place, scale: 1e6, tolerance: 1e-4, where: "svg" });
  return region.reduce((sum, ring) => sum + ringArea(ring), 0) / 1e10;
}

const PAGE_TILE = { unit: "mm", width: 10, height: 10, aspect: 1 } as const;

/** Area in px² that resvg covers, eight pixels to the px. */
export function rasterArea(text: string): number {
  const zoom = 8;
  const { pixels } = new Resvg(text, {
    fitTo: { mode: "zoom", value: zoom },
    font: { loadSystemFonts: false },
  }).render();
  let covered = 0;
  for (let i = 3; i < pixels.length; i += 4) covered += pixels[i];
  return covered / 255 / (zoom * zoom);
}
