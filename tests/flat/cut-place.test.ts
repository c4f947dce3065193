import { describe, expect, it } from "vitest";
import { countHoles, requireEdgeWall } from "../../src/flat/cut-place.js";
import type { GridPath } from "../../src/flat/grid.js";
import type { GridRegion } from "../../src/flat/polygons.js";
import { copiesAlong, type Strip } from "../../src/flat/strip.js";
import { failureOf, stripOf } from "./strips.js";

/** An oblong by its middle and its sides, mm. */
function oblong(
  { grid: { scale } }: Strip,
  [u, v]: readonly [number, number],
  [a, b]: readonly [number, number],
): GridPath {
  const corner = (x: number, y: number) => ({
    x: Math.round((u + (x * a) / 2) * scale),
    y: Math.round((v + (y * b) / 2) * scale),
  });
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** All that the strip works of a ring. */
const alongStrip = (strip: Strip, ring: GridPath): GridRegion => copiesAlong(strip, ring);

describe("holes round the whole band", () => {
  it("are as many as stand in one period, times the periods, wherever the tile begins", () => {
    const strip = stripOf({ repeats: 9 });
    for (const u of [0, 0.4, 3, 5.9]) {
      const region = [
        ...alongStrip(strip, oblong(strip, [u, 1], [1, 1])),
        ...alongStrip(strip, oblong(strip, [u + 2, -1], [1, 1])),
      ];
      expect(countHoles(strip, region, "p")).toBe(18);
    }
    const cycle = stripOf({ repeats: 9, cycle: 3 });
    expect(countHoles(cycle, alongStrip(cycle, oblong(cycle, [3, 0], [1, 1])), "p")).toBe(3);
  });

  it("are those drawn where the pattern stops", () => {
    const strip = stripOf({ repeats: 3, cover: 120 });
    const region = [1, 7, 9, 13].map((u) => oblong(strip, [u, 0], [1, 1]));
    expect(countHoles(strip, region, "p")).toBe(4);
    expect(countHoles(strip, [], "p")).toBe(0);
  });

  it("may not surround metal, nor run all the way round", () => {
    const strip = stripOf();
    const ring = (size: number) => oblong(strip, [3, 0], [size, size]);
    const frame = [...alongStrip(strip, ring(3)), ...alongStrip(strip, ring(1).toReversed())];
    expect(failureOf(() => countHoles(strip, frame, "p"))).toMatchObject({ code: "hole-frees-metal", path: "p" });
    const [low, high] = strip.complete.map((x) => x / strip.grid.scale);
    const band = [oblong(strip, [(low + high) / 2, 0], [high - low + 1, 1])];
    expect(failureOf(() => countHoles(strip, band, "p"))).toMatchObject({ code: "hole-parts-band", path: "p" });
  });
});

describe("the wall between a cut and the seat's edge", () => {
  const strip = stripOf();
  const reaching = (v: number) => [oblong(strip, [3, 0], [1, 2 * v])];

  it("is a tenth of a millimetre at least, on both sides", () => {
    expect(() => requireEdgeWall(strip, reaching(2.9), "p")).not.toThrow();
    expect(() => requireEdgeWall(strip, [], "p")).not.toThrow();
    expect(failureOf(() => requireEdgeWall(strip, reaching(2.91), "p"))).toMatchObject({
      code: "cut-at-edge",
      path: "p",
      value: 2.91,
    });
    const below = [oblong(strip, [3, -2.5], [1, 0.9])];
    expect(failureOf(() => requireEdgeWall(strip, below, "p")).message).toContain("comes within 0.05 mm of");
    expect(failureOf(() => requireEdgeWall(strip, reaching(3.2), "p")).message).toContain("reaches the edge");
  });

  it("names what would be allowed, and it is", () => {
    const allowed = Number(
      failureOf(() => requireEdgeWall(strip, reaching(2.95), "p")).allowed?.match(/within ([\d.]+) mm/)?.[1],
    );
    expect(allowed).toBeCloseTo(2.9, 3);
    expect(() => requireEdgeWall(strip, reaching(allowed), "p")).not.toThrow();
  });
});
