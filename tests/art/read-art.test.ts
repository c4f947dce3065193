import { describe, expect, it } from "vitest";
import { readArt } from "../../src/art/read-art.js";
import { failureOf, stripOf } from "../flat/strips.js";

const strip = stripOf({ tileWidth: 6, aspect: 0.5 });
const read = (path: string, unit: "tile" | "mm" = "tile") =>
  readArt(strip, { path, unit }, 0.005, "pattern.regions[0].path");

describe("reading art", () => {
  it("takes tile widths along and across, and millimetres", () => {
    const [inTiles] = read("M 0 0 H 0.5 V 0.25 Z").closed;
    const [inMm] = read("M 0 0 H 3 V 1.5 Z", "mm").closed;
    expect(inTiles).toEqual(inMm);
    expect(inTiles[2]).toEqual({ x: strip.grid.tile / 2, y: strip.grid.tile / 4 });
  });

  it("keeps open from closed", () => {
    const { closed, open } = read("M 0 0 H 0.5 V 0.2 Z M 0 0.1 H 1");
    expect([closed.length, open.length]).toEqual([1, 1]);
  });

  it.each(["M 0 0", "M 0.1 0.1 Z", "M 0 0 L 0 0", "M 0 0 H 0.5 Z", "M 0 0 L 1e-9 0"])("calls %s empty", (path) => {
    const error = failureOf(() => read(path));
    expect([error.code, error.path, error.value]).toEqual(["path-empty", "pattern.regions[0].path", path]);
  });

  it.each(["", "L 1 1", "M 0 0 L", "M 0 0 X 3", "m"])("calls %j malformed", (path) => {
    expect(failureOf(() => read(path)).code).toBe("path-malformed");
  });

  it("lets art reach one tile over, and says where it goes further", () => {
    expect(read("M -1 0 H 2 V 0.2 Z").closed).toHaveLength(1);
    const error = failureOf(() => read("M 0 0 H 2.1 V 0.1 Z"));
    expect(error.code).toBe("path-outside-tile");
    expect(error.message).toMatch(/x 2\.1, y 0/);
    expect(error.allowed).toMatch(/x from -1 to 2, y within ±0\.25/);
    expect(failureOf(() => read("M 0 0 H 0.5 V 0.26 Z")).code).toBe("path-outside-tile");
    expect(failureOf(() => read("M 0 0 H 13 V 1 Z", "mm")).allowed).toMatch(
      /x from -6 to 12, y within ±1\.5 \(unit mm\)/,
    );
  });

  it("refuses a path that is too tangled, closed or open, and takes one that is not", () => {
    const zigzag = (count: number) =>
      Array.from(
        { length: count },
        (_, i) => `${((i * 0.618) % 1).toFixed(4)} ${(((i * 0.755) % 1) / 2 - 0.25).toFixed(4)}`,
      );
    for (const end of ["", " Z"]) {
      const error = failureOf(() => read(`M ${zigzag(1600).join(" L ")}${end}`));
      expect([error.code, error.path]).toEqual(["path-too-tangled", "pattern.regions[0].path"]);
      expect(() => read(`M ${zigzag(200).join(" L ")}${end}`)).not.toThrow();
    }
  });
});
