import { describe, expect, it } from "vitest";
import { splitAtLines, splittingAtLines } from "../../src/band/surface/refine.js";
import { finish, type Pausing } from "../../src/base/pausing.js";
import { buildEdgeTable } from "../../src/mesh/edges.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import {
  flippedBody,
  halfTurnedBody,
  loneTile,
  mirroredTile,
  plainTile,
  type Tile,
  tilesOver,
} from "../../src/solids/tile.js";
import { failureOf } from "../support/failure-of.js";
import { box } from "../support/meshes.js";

const [PERIOD, WIDTH, HEIGHT] = [3, 2, 0.5];

/** A beam from seam to seam, open at both: its own triangles have no mirror. */
const beam = (left: number): Mesh => {
  const { positions: p, triangles } = box([PERIOD, WIDTH, HEIGHT], [left, -WIDTH / 2, 0]);
  const isEnd = (t: number) => new Set([0, 1, 2].map((k) => p[3 * triangles[3 * t + k]])).size === 1;
  const open = { positions: p, triangles: triangles.filter((_, i) => !isEnd(Math.floor(i / 3))) };
  return splitAtLines(open, 1, [-0.3, 0.4]);
};

// biome-ignore lint/correctness/useYield: what refines nothing has nowhere to stop
const same = function* (mesh: Mesh): Pausing<Mesh> {
  return mesh;
};
const cornersOf = ({ positions: p }: Mesh) =>
  Array.from({ length: p.length / 3 }, (_, v) => [...p.subarray(3 * v, 3 * v + 3)]);
/** Triangles by their corners' places. */
const facesOf = (mesh: Mesh, map: (point: number[]) => number[]) => {
  const corners = cornersOf(mesh).map((corner) =>
    map(corner)
      .map((x) => x.toFixed(9).replace("-0.000000000", "0.000000000"))
      .join(" "),
  );
  return Array.from({ length: mesh.triangles.length / 3 }, (_, t) =>
    [0, 1, 2]
      .map((k) => corners[mesh.triangles[3 * t + k]])
      .sort()
      .join(" | "),
  ).sort();
};

const openEdges = (mesh: Mesh) => buildEdgeTable(mesh).open.length;

describe("a tile", () => {
  it("goes on in the next: the points of its right side have twins on its left", () => {
    const tile = plainTile(beam(-1), [-1, 2]);
    const { positions: p } = tile.mesh;
    const rights = [...tile.follows].flatMap((left, v) => (left === -1 ? [] : [[v, left]]));
    expect(rights).toHaveLength(8);
    for (const [right, left] of rights) {
      expect([p[3 * right] - PERIOD, p[3 * right + 1], p[3 * right + 2]]).toEqual([
        ...p.subarray(3 * left, 3 * left + 3),
      ]);
    }
  });

  it("is refused where its sides differ", () => {
    const { positions, triangles } = beam(0);
    const moved = positions.map((value, i) => (i % 3 === 1 && positions[i - 1] === PERIOD ? value * 1.001 : value));
    expect(failureOf(() => plainTile({ positions: moved, triangles }, [0, PERIOD])).code).toBe("seam-mismatch");
  });

  it.each([
    [0, 2.9, 1],
    [-0.1, 3.1, 3],
    [4, 14, 4],
  ])("from u %f to %f is there %i times, joined, and open at its ends alone", (low, high, count) => {
    const tile = plainTile(beam(0), [0, PERIOD]);
    const tiles = tilesOver(tile, low, high);
    expect(openEdges(tiles)).toBe(openEdges(tile.mesh));
    expect(tiles.triangles).toHaveLength(count * tile.mesh.triangles.length);
    const along = cornersOf(tiles).map(([u]) => u);
    expect(Math.min(...along)).toBeLessThanOrEqual(low);
    expect(Math.max(...along)).toBeGreaterThanOrEqual(high);
    expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(count * PERIOD, 12);
  });
});

describe("a tile made of mirror images", () => {
  const isAsItsImage = ({ mesh }: Tile, map: (point: number[]) => number[]) => {
    expect(facesOf(mesh, map)).toEqual(facesOf(mesh, (point) => point));
  };

  it.each([false, true])("has triangles as symmetric as its shape (with a middle: %s)", (middle) => {
    const plain = beam(0);
    expect(facesOf(plain, ([u, v, h]) => [PERIOD - u, v, h])).not.toEqual(facesOf(plain, (point) => point));
    const refine = (mesh: Mesh) => splittingAtLines(mesh, 0, [0.4, 0.9]);
    const tile = finish(mirroredTile(plainTile(plain, [0, PERIOD]), { axis: 0, middle }, refine));
    isAsItsImage(tile, ([u, v, h]) => [PERIOD - u, v, h]);
    if (middle) isAsItsImage(tile, ([u, v, h]) => [u, -v, h]);
    const tiles = tilesOver(tile, 0.1, 2 * PERIOD - 0.1);
    expect(openEdges(tiles)).toBe(openEdges(tile.mesh));
  });

  it.each([0, 0.4])("begins at the mirror, here at %f, wherever the seam lies, and is the same body", (axis) => {
    const seam = [-0.7, PERIOD - 0.7] as const;
    const tile = finish(mirroredTile(plainTile(beam(-0.7), seam), { axis, middle: false }, same));
    expect(tile).toMatchObject({ left: axis, period: PERIOD });
    const along = cornersOf(tile.mesh).map(([u]) => u);
    expect(Math.min(...along)).toBeCloseTo(axis, 12);
    expect(Math.max(...along)).toBeCloseTo(axis + PERIOD, 12);
    expect(volumeAlong(tile.mesh)).toBeCloseTo(PERIOD * WIDTH * HEIGHT, 9);
  });
});

describe("a body made of its upper half", () => {
  it("has triangles as symmetric as its shape, and its sides where they were", () => {
    const plain = beam(0);
    expect(facesOf(plain, ([u, v, h]) => [u, -v, h])).not.toEqual(facesOf(plain, (point) => point));
    const body = finish(flippedBody(plain, (mesh) => splittingAtLines(mesh, 0, [0.4, 0.9])));
    expect(facesOf(body, ([u, v, h]) => [u, -v, h])).toEqual(facesOf(body, (point) => point));
    expect(volumeAlong(body)).toBeCloseTo(PERIOD * WIDTH * HEIGHT, 9);
    const tiles = tilesOver(plainTile(body, [0, PERIOD]), 0.1, 2 * PERIOD - 0.1);
    expect(openEdges(tiles)).toBe(openEdges(body));
  });
});

describe("a body that ends by itself", () => {
  it("is the one tile of a round, and closed where it is made of mirror images too", () => {
    const block = box([PERIOD, WIDTH, HEIGHT], [1, -WIDTH / 2, 0]);
    const tile = loneTile(block, 20);
    expect(tile).toMatchObject({ left: 1, period: 20 });
    expect(openEdges(tilesOver(tile, 0, 25))).toBe(0);
    const halves = finish(mirroredTile(tile, { axis: 1 + PERIOD / 2, middle: false }, same));
    expect(openEdges(turnRound(halves, 1))).toBe(0);
    expect(volumeAlong(halves.mesh)).toBeCloseTo(PERIOD * WIDTH * HEIGHT, 9);
  });
});

describe("a body made of one side and its image under a half turn", () => {
  it.each([
    ["about the axis", 1 + PERIOD / 2],
    ["half way round from it, where it lies about the back", 1 + PERIOD / 2 - 10],
    ["the same, the other way", 1 + PERIOD / 2 + 10],
  ])("is the same body, %s", (_, axis) => {
    const block = box([PERIOD, WIDTH, HEIGHT], [1, -WIDTH / 2, 0]);
    const body = finish(
      halfTurnedBody(block, { axis, round: 20 }, (mesh) => splittingAtLines(mesh, 0, [1.4, 1.9, 3.2])),
    );
    const middle = 1 + PERIOD / 2;
    expect(facesOf(body, ([u, v, h]) => [2 * middle - u, -v, h])).toEqual(facesOf(body, (point) => point));
    expect(volumeAlong(body)).toBeCloseTo(PERIOD * WIDTH * HEIGHT, 9);
    const along = cornersOf(body).map(([u]) => u);
    expect([Math.min(...along), Math.max(...along)]).toEqual([1, 1 + PERIOD]);
  });
});

/** Volume by the flux of (0, 0, h) through the faces: sides that stand upright have none, so they may be open. */
function volumeAlong({ positions: p, triangles }: Mesh): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => [...p.subarray(3 * triangles[t + k], 3 * triangles[t + k] + 3)]);
    sum += (((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2) * ((a[2] + b[2] + c[2]) / 3);
  }
  return sum;
}
