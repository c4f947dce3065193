// Covers: src/art/svg/element-style.ts, src/art/svg/length.ts, src/art/svg/shapes.ts
/** Sizes and places as properties, and lengths by the height of letters: each beside the same drawing written plainly. */
import { describe, expect, it } from "vitest";
import { importSvg, rasterArea, svg } from "./svgs.js";

/** What it is, as properties or by em, and the same by attributes in px. */
const pairs: [string, string, string][] = [
  [
    "circle in a style sheet over its attribute",
    '<style>.a{cx:40px;cy:50px;r:20px}</style><circle class="a" r="3"/>',
    '<circle cx="40" cy="50" r="20"/>',
  ],
  [
    "rect by style",
    '<rect style="x:10px;y:20px;width:30px;height:40%;rx:5px"/>',
    '<rect x="10" y="20" width="30" height="40" rx="5"/>',
  ],
  [
    "ellipse by style",
    '<ellipse style="cx:50px;cy:50px;rx:30px;ry:1in"/>',
    '<ellipse cx="50" cy="50" rx="30" ry="96"/>',
  ],
  [
    "path by style",
    `<path style='d: path("M10 10 H60 V70 Z")' d="M0 0H5V5Z"/><path style="d:none" d="M0 0H99V99Z"/>`,
    '<path d="M10 10 H60 V70 Z"/>',
  ],
  [
    "viewports by style",
    '<symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="6"/></symbol><use href="#s" style="x:10px;y:10px;width:40px;height:60px"/><svg style="x:60px;width:30px;height:30px" viewBox="0 0 9 9"><circle r="7"/></svg>',
    '<symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="6"/></symbol><use href="#s" x="10" y="10" width="40" height="60"/><svg x="60" width="30" height="30" viewBox="0 0 9 9"><circle r="7"/></svg>',
  ],
  [
    "sizes are not inherited",
    '<g style="width:90px;r:40px"><rect width="10" height="10"/><circle cx="50" cy="50" r="9"/></g>',
    '<rect width="10" height="10"/><circle cx="50" cy="50" r="9"/>',
  ],
  [
    "em of a group's letters, of its parent's, in percent",
    '<g font-size="10"><rect width="2em" height="3ex"/><g font-size="2em"><rect x="1em" y="1em" width="1em" height="1em"/><g style="font-size:50%"><rect x="50" width="1em" height="2em"/></g></g></g>',
    '<rect width="20" height="15"/><rect x="20" y="20" width="20" height="20"/><rect x="50" width="10" height="20"/>',
  ],
  [
    "em without a size, larger and smaller letters, stroke by em",
    '<rect width="1em" height="1em"/><g font-size="larger"><rect x="30" width="1em" height="10"/></g><g font-size="12pt"><path d="M0 50H90" stroke="black" stroke-width=".5em"/></g>',
    '<rect width="16" height="16"/><rect x="30" width="19.2" height="10"/><path d="M0 50H90" stroke="black" stroke-width="8"/>',
  ],
];

describe("a drawing by properties is the same written plainly", () => {
  it.each(pairs)("%s", (_, content, plainly) => {
    const { area, warnings } = importSvg(svg(content));
    const expected = rasterArea(svg(plainly));
    expect(warnings).toEqual([]);
    expect(expected).toBeGreaterThan(0);
    expect(Math.abs(area - expected)).toBeLessThan(0.004 * expected + 0.8);
  });

  it("has rem by the outermost element's letters", () => {
    const content = '<g font-size="10"><rect width="1rem" height="1em"/></g>';
    expect(importSvg(svg(content, 'width="100" height="100" font-size="20"')).area).toBeCloseTo(200, 6);
    expect(importSvg(svg(content)).area).toBeCloseTo(160, 6);
  });

  it("has its page by a style, but not by shares of a web page", () => {
    const page = (attributes: string) => importSvg(svg('<rect width="9" height="9"/>', attributes)).drawing.page;
    expect(page('style="width:40px;height:2cm" width="9" viewBox="0 0 9 9"')).toMatchObject({ width: 40 });
    expect(page('style="width:100%;height:auto" width="9" height="7"')).toMatchObject({ width: 9, height: 7 });
  });

  it("is refused where a property is no length", () => {
    expect(() => importSvg(svg('<circle style="r:wide"/>'))).toThrow(/r of <circle> at line 1 is no length/);
  });
});
