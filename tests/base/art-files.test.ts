import { expect, it } from "vitest";
import { ART_BYTES, artLimit } from "../../src/base/art-files.js";

it("knows how large art may be", () => {
  expect(artLimit("a.SVG")).toBe(ART_BYTES.drawing);
  expect(artLimit("a.svgz")).toBe(ART_BYTES.drawing);
  expect(artLimit("leaf.svg.png")).toBe(ART_BYTES.image);
  for (const font of ["a.ttf", "a.otf", "a.woff", "a.woff2", "a.ttc"]) expect(artLimit(font)).toBe(ART_BYTES.font);
  for (const other of ["a.exe", "svg", "a.svg.gz", ""]) expect(artLimit(other)).toBeUndefined();
});
