import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimal, element, escapeText, svgDocument } from "../../../src/output/drawing/svg.js";
import { parseSvg, sheetSize } from "./raster.js";

describe("writing SVG", () => {
  it("gives any text back through a parser, but for what XML forbids", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const document = parseSvg(svgDocument(2, 1, "t", element("text", { id: text }, escapeText(text))));
        const [found] = [...document.getElementsByTagName("text")];
        // XML's own line ends: a parser reads \\r as \\n, and attributes' white space as spaces.
        const allowed = Array.from(text, (sign) =>
          /[\t\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u.test(sign) ? sign : "\uFFFD",
        );
        expect(found.textContent).toBe(allowed.join("").replaceAll(/\r\n?/g, "\n"));
      }),
      { seed: 20261125 },
    );
  });

  it("writes sizes in mm and short numbers", () => {
    expect(sheetSize(parseSvg(svgDocument(120.5, 80, "t")))).toEqual({ width: 120.5, height: 80 });
    expect([1.23456789, -0.00001, 1e-7, 100].map(decimal)).toEqual(["1.2346", "0", "0", "100"]);
  });
});
