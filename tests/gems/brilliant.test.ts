// Covers: src/gems/brilliant-geometry.ts, src/gems/angles.ts
import { describe, expect, it } from "vitest";
import { crownAngleOf, crownHeightAt, pavilionAngleOf, pavilionDepthAt } from "../../src/gems/angles.js";
import { brilliant } from "../../src/gems/brilliant.js";
import { lineCrossing, planeThrough, shareOnArc } from "../../src/gems/brilliant-geometry.js";
import { circleGirdle, round } from "../../src/gems/cuts/round.js";
import { BRILLIANT_USUAL, TOLKOWSKY } from "../../src/gems/cuts/usual.js";
import { polyhedronMesh } from "../../src/gems/polyhedron.js";

/** A facet as the mesh alone shows it: triangles of one plane that are turned alike. */
interface Seen {
  readonly normal: readonly [number, number, number];
  area: number;
}

/** The facets of a mesh, found by planes: neither names nor order are known. */
function facetsSeen({ positions: p, triangles }: ReturnType<typeof polyhedronMesh>): Seen[] {
  const seen = new Map<string, Seen>();
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((i) => 3 * triangles[t + i]);
    const u = [0, 1, 2].map((i) => p[b + i] - p[a + i]);
    const v = [0, 1, 2].map((i) => p[c + i] - p[a + i]);
    const cross = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const twice = Math.hypot(...cross);
    const [x, y, z] = cross.map((part) => part / twice);
    const offset = x * p[a] + y * p[a + 1] + z * p[a + 2];
    const key = [x, y, z, offset].map((part) => (part + 0).toFixed(6).replace(/^-0\.0+$/, "0.000000")).join(" ");
    const known = seen.get(key);
    if (known) known.area += twice / 2;
    else seen.set(key, { normal: [x, y, z], area: twice / 2 });
  }
  return [...seen.values()];
}

/** Angle of a facet to the girdle's plane, degrees, and the direction in which it looks, as a part of a turn. */
function anglesOf({ normal: [x, y, z] }: Seen): { lean: number; turn: number } {
  return {
    lean: (Math.acos(Math.abs(z)) * 180) / Math.PI,
    turn: ((Math.atan2(y, x) / (2 * Math.PI)) * 16 + 16) % 16,
  };
}

describe("the round brilliant, by its mesh alone", () => {
  const mesh = polyhedronMesh(round.facets({ length: 6.5, width: 6.5 }, TOLKOWSKY, 0.02));
  const seen = facetsSeen(mesh);
  const sloped = seen.filter(({ normal }) => Math.abs(normal[2]) > 1e-6);

  it("has 58 facets beside those of the girdle: 33 above, 25 below (gemfrance.co.uk)", () => {
    expect(sloped).toHaveLength(58);
    expect(sloped.filter(({ normal }) => normal[2] > 0)).toHaveLength(33);
    expect(sloped.filter(({ normal }) => normal[2] < 0)).toHaveLength(25);
  });

  it("has eight bezels at 34.5° and eight mains at 40.75°, each above the other, and flat table and culet", () => {
    for (const [up, angle] of [
      [1, 34.5],
      [-1, 40.75],
    ] as const) {
      const mains = sloped.filter((facet) => facet.normal[2] * up > 0 && Math.abs(anglesOf(facet).lean - angle) < 1e-6);
      expect(mains).toHaveLength(8);
      const turns = mains.map((facet) => anglesOf(facet).turn).sort((a, b) => a - b);
      for (const [i, turn] of turns.map((one) => Math.round(one * 1e6) / 1e6).entries()) expect(turn % 16).toBe(2 * i);
    }
    expect(sloped.filter(({ normal }) => Math.abs(normal[2]) > 1 - 1e-9)).toHaveLength(2);
  });

  it("has a table whose corners are 53 % of the width apart: an octagon of that width", () => {
    const table = sloped.find(({ normal }) => normal[2] > 1 - 1e-9);
    // The area of an octagon in a circle of radius r is 2√2 r².
    expect(table?.area).toBeCloseTo(2 * Math.SQRT2 * (0.53 * 3.25) ** 2, 9);
  });

  it("is 62.2 % deep at Tolkowsky's proportions (62.3 by rounded parts) and 61.2 % at the usual ones", () => {
    const depth = ({ crownHeight, girdle, pavilionDepth }: typeof TOLKOWSKY) => crownHeight + girdle + pavilionDepth;
    expect(100 * TOLKOWSKY.crownHeight).toBeCloseTo(16.15, 2);
    expect(100 * TOLKOWSKY.pavilionDepth).toBeCloseTo(43.1, 0);
    expect(100 * depth(TOLKOWSKY)).toBeCloseTo(62.2, 1);
    expect(100 * depth(BRILLIANT_USUAL)).toBeCloseTo(61.2, 1);
  });

  it("has stars that reach 55 % of the way to the girdle, and lower halves 80 % of that to the culet", () => {
    const { points, facets } = brilliant(circleGirdle(2, 1), { ...BRILLIANT_USUAL, culet: 0 }, 0.01);
    const farthest = (name: string) =>
      facets
        .filter((facet) => facet.name === name)
        .map(({ ring }) => ring.map((i) => Math.hypot(points[i][0], points[i][1])));
    const half = Math.PI / 8;
    const edge = 0.56 * Math.cos(half);
    for (const radii of farthest("star")) expect((Math.max(...radii) - edge) / (1 - edge)).toBeCloseTo(0.55, 12);
    for (const radii of farthest("lower half")) expect(1 - Math.min(...radii)).toBeCloseTo(0.8, 12);
    // Without a culet there are 57.
    expect(facets.filter(({ name }) => name !== "girdle")).toHaveLength(57);
  });
});

describe("lines, arcs and planes of brilliants", () => {
  it("cross where they should", () => {
    expect(lineCrossing([0, 0], [1, 1], [4, 0], [-1, 1])).toEqual([2, 2]);
    const arc = { kind: "arc", centre: [1, 0], radius: 2, start: 0, sweep: 1 } as const;
    expect(shareOnArc([0, 0], [1, 0], arc)).toBe(3);
    expect(shareOnArc([0, 0], [-2, 0], arc)).toBe(0.5);
    expect(planeThrough([0, 0, 1], [1, 0, 3], [0, 1, 0])([2, 3])).toBe(1 + 4 - 3);
  });

  it("give angles and shares that are each other's", () => {
    const shares = { ...BRILLIANT_USUAL, table: 0.6, culet: 0.02 };
    const made = { ...shares, crownHeight: crownHeightAt(33, 0.6), pavilionDepth: pavilionDepthAt(41.2, 0.02) };
    expect(crownAngleOf(made)).toBeCloseTo(33, 12);
    expect(pavilionAngleOf(made)).toBeCloseTo(41.2, 12);
  });
});
