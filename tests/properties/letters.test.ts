// Across: straight-sided art that is symmetric, nearly so, and not at all
/**
 * Rings of letters, frames and nicks by the road that their symmetry gives, held against what was drawn and against one union
 * of the whole ring: volume, area, centroid, and heights sampled over a tile.
 *
 * Every corner of such art may have its image on the outline, without the art being its own image.
 */
import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { encloses } from "../../src/base/math/polygon.js";
import { checkSolid } from "../../src/judge/gate.js";
import { measureMesh } from "../../src/measure/measure.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";
import { bodiesOf } from "../support/stages.js";

/** mm; the band is flat, so that a tile is true everywhere. */
const [TOLERANCE, HEIGHT, WIDTH, REPEATS, SEAT] = [0.02, 0.4, 5, 7, 10];

/** Roads differ by what tidying may change. */
const SAME_SHARE = 1e-5;

/** mm */
const SAME_CENTRE = 1e-4;

const band = {
  annulet: 1,
  size: { diameter: 16 },
  tolerance: TOLERANCE,
  profile: { width: WIDTH, thickness: SEAT - 8, bore: { form: "flat" }, outside: { form: "flat", edge: 0 } },
};

/** mm */
const TILE = (2 * Math.PI * SEAT) / REPEATS;

type Polygon = readonly Point2[];

/** Corners in tenths of a tile along and of the seat across, from their middle. */
const letters: Record<string, Polygon> = {
  C: [
    [-3, -3],
    [3, -3],
    [3, -1],
    [2, -1],
    [2, -2],
    [-2, -2],
    [-2, 2],
    [2, 2],
    [2, 1],
    [3, 1],
    [3, 3],
    [-3, 3],
  ],
  E: [
    [-3, -3],
    [3, -3],
    [3, -2],
    [-2, -2],
    [-2, -0.5],
    [3, -0.5],
    [3, 0.5],
    [-2, 0.5],
    [-2, 2],
    [3, 2],
    [3, 3],
    [-3, 3],
  ],
  F: [
    [-3, -3],
    [-2, -3],
    [-2, -0.5],
    [3, -0.5],
    [3, 0.5],
    [-2, 0.5],
    [-2, 2],
    [3, 2],
    [3, 3],
    [-3, 3],
  ],
  S: [
    [-3, -3],
    [3, -3],
    [3, 0.5],
    [-2, 0.5],
    [-2, 2],
    [3, 2],
    [3, 3],
    [-3, 3],
    [-3, -0.5],
    [2, -0.5],
    [2, -2],
    [-3, -2],
  ],
  Z: [
    [-3, -3],
    [3, -3],
    [3, -2],
    [-1.5, -2],
    [3, 2],
    [3, 3],
    [-3, 3],
    [-3, 2],
    [1.5, 2],
    [-3, -2],
  ],
  H: [
    [-3, -3],
    [-2, -3],
    [-2, -0.5],
    [2, -0.5],
    [2, -3],
    [3, -3],
    [3, 3],
    [2, 3],
    [2, 0.5],
    [-2, 0.5],
    [-2, 3],
    [-3, 3],
  ],
};

/** An oblong with a nick so many tolerances deep in its right side, above its middle. */
function nicked(tolerances: number): Polygon {
  const deep = (10 * tolerances * TOLERANCE) / TILE;
  return [
    [-3, -2],
    [3, -2],
    [3, 0.5],
    [3 - deep, 0.5],
    [3 - deep, 1.5],
    [3, 1.5],
    [3, 2],
    [-3, 2],
  ];
}

const documentOf = (corners: Polygon, cover = 360) => {
  const path = `M ${corners.map(([x, y]) => `${0.5 + x / 10} ${y / 10}`).join(" L ")} Z`;
  const fit = { repeats: REPEATS, aspect: 1, hold: "band" };
  return { ...band, pattern: { fit, cover, symmetry: "p1", regions: [{ name: "art", path, height: HEIGHT }] } };
};

/** The greatest radius of a mesh on the ray from the axis at an angle and a height. */
function radiusAt({ positions: p, triangles }: Mesh, angle: number, z: number): number {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  let most = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    // In the plane across the ray, (side, z) of the three corners; what they enclose holds the ray.
    const flat: [number, number][] = [];
    const along: number[] = [];
    for (let k = 0; k < 3; k++) {
      const i = 3 * triangles[t + k];
      flat.push([p[i + 1] * dx - p[i] * dy, p[i + 2] - z]);
      along.push(p[i] * dx + p[i + 1] * dy);
    }
    const [[ax, ay], [bx, by], [cx, cy]] = flat;
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (area === 0) continue;
    const shares = [bx * cy - by * cx, cx * ay - cy * ax, ax * by - ay * bx].map((share) => share / area);
    if (shares.some((share) => share < 0)) continue;
    most = Math.max(
      most,
      shares.reduce((sum, share, k) => sum + share * along[k], 0),
    );
  }
  return most;
}

/** How far a point lies from the nearest side of a polygon. */
function fromSides([x, y]: Point2, corners: Polygon): number {
  return Math.min(
    ...corners.map(([ax, ay], i) => {
      const [bx, by] = corners[(i + 1) % corners.length];
      const [ex, ey] = [bx - ax, by - ay];
      const t = Math.min(1, Math.max(0, ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey)));
      return Math.hypot(x - ax - t * ex, y - ay - t * ey);
    }),
  );
}

/** Places over the tiles: coprime steps, so that no row or column comes again; u in tiles, v in shares of the seat. */
const PLACES = Array.from(
  { length: 60 },
  (_, i) => [((i * 0.381966) % 1) * REPEATS, ((i * 0.7548777) % 1) - 0.5] as const,
);

const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: (mesh: Mesh) => checkSolid(mesh) };

describe("rings of straight-sided art", () => {
  it.each<[name: string, corners: Polygon, cover: number, road: string, upper: boolean]>([
    ["C", letters.C, 360, "mirror", true],
    ["E", letters.E, 360, "mirror", true],
    ["F", letters.F, 360, "turn", false],
    ["S", letters.S, 360, "turn", false],
    ["Z", letters.Z, 360, "turn", false],
    ["H", letters.H, 360, "mirror", true],
    ["C that stops", letters.C, 200, "mirror", true],
    ["S that stops", letters.S, 200, "turn", false],
    ["an oblong nicked by half a tolerance", nicked(0.5), 360, "mirror", true],
    ["an oblong nicked by two tolerances", nicked(2), 360, "turn", false],
  ])("%s: as drawn, and as the whole ring in one union", async (_, corners, cover, road, upper) => {
    const { parts, fit } = bodiesOf(documentOf(corners, cover));
    const ring = await uniteRing(parts, options);
    expect(ring.road).toBe(road);
    expect(parts.symmetry?.sectors[0].upper ?? false).toBe(upper);
    expect(ring.check.closed).toBe(true);
    if (road !== "whole") {
      const whole = await uniteRing({ ...parts, symmetry: undefined }, options);
      const [own, other] = [measureMesh(ring.mesh), measureMesh(whole.mesh)];
      expect(Math.abs(own.volume / other.volume - 1)).toBeLessThan(SAME_SHARE);
      expect(Math.abs(own.area / other.area - 1)).toBeLessThan(SAME_SHARE);
      for (const [k, value] of own.centroid.entries())
        expect(Math.abs(value - other.centroid[k])).toBeLessThan(SAME_CENTRE);
      expect(ring.check.genus).toBe(whole.check.genus);
    }
    // Unrolled: outside is as high as drawn, but for what lies within a tolerance or so of an outline.
    const [tile, count] = [fit?.tileWidth ?? 0, fit?.repeats ?? 0];
    const start = Math.PI / 2 - (Math.PI * cover) / 360;
    const drawn = corners.map(([x, y]): Point2 => [(0.5 + x / 10) * tile, (y / 10) * WIDTH]);
    let asked = 0;
    for (const [along, across] of PLACES) {
      if (along >= count) continue;
      const place: Point2 = [(along % 1) * tile, across * WIDTH];
      if (fromSides(place, drawn) < 3 * TOLERANCE) continue;
      const radius = radiusAt(ring.mesh, start + (along * tile) / SEAT, place[1]);
      const height = encloses(drawn, place) ? HEIGHT : 0;
      expect(Math.abs(radius - SEAT - height), `at ${along} tiles, ${across}`).toBeLessThan(TOLERANCE);
      asked++;
    }
    expect(asked).toBeGreaterThan(20);
  });
});
