// Normals of a ring of alike units too: those of the whole mesh are what they are held against
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nextEdge } from "../../src/mesh/edges.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { creasedNormals } from "../../src/mesh/normals.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { findTurned, type Turned, turnedImages } from "../../src/mesh/turned.js";
import { imagesOn, unitEdges } from "../../src/mesh/unit-edges.js";
import { AROUND, sector } from "../support/sector.js";

/** All images of some vertices and triangles; a corner is [vertex of the unit, images on]. */
function turned(units: number, vertices: readonly number[][], corners: readonly (readonly [number, number])[]): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (let k = 0; k < units; k++) {
    const [cos, sin] = [Math.cos((2 * Math.PI * k) / units), Math.sin((2 * Math.PI * k) / units)];
    for (const [x, y, z] of vertices) positions.push(x * cos - y * sin, x * sin + y * cos, z);
    for (const [vertex, on] of corners) triangles.push(((k + on) % units) * vertices.length + vertex);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** A torus of few columns a unit, bent out of shape in each of them alike. */
function bent(units: number, columns: number, offs: readonly number[]): Mesh {
  const vertices = Array.from({ length: columns * AROUND }, (_, i) => {
    const [column, v] = [Math.floor(i / AROUND), (2 * Math.PI * (i % AROUND)) / AROUND];
    const u = (2 * Math.PI * column) / (columns * units);
    const r = 9 + Math.cos(v) + offs[i % offs.length];
    return [r * Math.cos(u), r * Math.sin(u), Math.sin(v) + offs[(3 * i + 1) % offs.length]];
  });
  const at = (column: number, j: number) =>
    [(column % columns) * AROUND + (j % AROUND), Math.floor(column / columns)] as const;
  const corners = Array.from({ length: columns * AROUND }, (_, i) => {
    const [c, j] = [Math.floor(i / AROUND), i % AROUND];
    return [at(c, j), at(c + 1, j), at(c, j + 1), at(c, j + 1), at(c + 1, j), at(c + 1, j + 1)];
  });
  return turned(units, vertices, corners.flat());
}

/** The same mesh with the corners of its first triangle moved on: no unit's images are found in it. */
function movedOn({ positions, triangles }: Mesh): Mesh {
  const other = triangles.slice();
  for (let i = 0; i < 3; i++) other[i] = triangles[(i + 1) % 3];
  return { positions, triangles: other };
}

/** Places and normals of all corners, the first triangle's moved on. */
function byCorner(mesh: Mesh, crease: number, first = 0): number[][] {
  const { positions, normals, triangles } = creasedNormals(mesh, crease);
  return Array.from(triangles, (_, i) => {
    const at = 3 * triangles[i < 3 ? (i + first) % 3 : i];
    return [...positions.subarray(at, at + 3), ...normals.subarray(at, at + 3)];
  });
}

const mostUnits = (mesh: Mesh): Turned | undefined => [...findTurned(mesh)][0];

function expectAsWhole(mesh: Mesh, crease: number): void {
  const [byUnit, whole] = [byCorner(mesh, crease, 1), byCorner(movedOn(mesh), crease)];
  expect(mostUnits(movedOn(mesh))).toBeUndefined();
  const off = byUnit.flatMap((corner, i) => corner.map((value, k) => Math.abs(value - whole[i][k])));
  // A step of single precision at a ring's size.
  expect(Math.max(...off)).toBeLessThan(2e-6);
  const split = (one: Mesh) => creasedNormals(one, crease).positions.length;
  expect(split(mesh)).toBe(split(movedOn(mesh)));
}

describe("normals by one unit", () => {
  it("are those of the whole ring, of any shape, however few columns a unit has", () => {
    const shapes = fc.record({
      units: fc.integer({ min: 2, max: 7 }),
      columns: fc.integer({ min: 1, max: 4 }),
      offs: fc.array(fc.double({ min: -0.4, max: 0.4, noNaN: true }), { minLength: 5, maxLength: 17 }),
      // At 0 the rounding of level faces decides.
      crease: fc.double({ min: 0.01, max: Math.PI, noNaN: true }),
    });
    fc.assert(
      fc.property(shapes, ({ units, columns, offs, crease }) => {
        // Two columns in all would be a ring without a hole.
        fc.pre(units * columns > 2);
        expectAsWhole(bent(units, columns, offs), crease);
      }),
      {
        numRuns: 60,
        examples: [[{ units: 3, columns: 1, offs: [0], crease: 1 }], [{ units: 5, columns: 2, offs: [0], crease: 1 }]],
      },
    );
  });

  it("are split at a crease that lies just where two units meet, and nowhere else", () => {
    const smooth = bent(6, 4, [0]);
    const lifted = bent(6, 4, [0, ...Array.from({ length: AROUND - 1 }, () => 0)]);
    expect(mostUnits(smooth)?.units).toBeGreaterThan(5);
    // Of five columns the first is lifted, so its edges are sharp on both sides, one of them across the end of the unit.
    const offs = Array.from({ length: 5 * AROUND }, (_, i) => (i < AROUND ? 0.8 : 0));
    for (const crease of [0.2, 0.5, 0.9, 1.3]) expectAsWhole(bent(6, 5, offs), crease);
    expectAsWhole(lifted, 0.5);
  });

  it("leave edges open that only seem to meet, since they run to different images", () => {
    // a → b and b → a's next image.
    const vertices = [
      [9, 0, 0],
      [9, 1, 0.1],
      [10, 0.5, 1],
      [10, 1.5, -1],
    ];
    const open = turned(3, vertices, [
      [0, 0],
      [1, 0],
      [2, 0],
      [1, 0],
      [0, 1],
      [3, 0],
    ]);
    expect(mostUnits(open)?.units).toBe(3);
    expect(unitEdges(mostUnits(open) as Turned)).toBeUndefined();
    for (const crease of [0, 1, Math.PI]) expectAsWhole(open, crease);
  });
});

describe("the edge table of a unit", () => {
  it("matches the edges of its end to those of its start, one image on", () => {
    const found = turnedImages(turnRound(sector(5), 5), 5) as Turned;
    const { opposite, open } = unitEdges(found) as NonNullable<ReturnType<typeof unitEdges>>;
    expect(open).toEqual([]);
    const on = Array.from(opposite, (back, h) => imagesOn(found, h, back));
    // As many edges lead to the unit before as to the one after.
    expect(on.filter((k) => k === 1)).toHaveLength(AROUND);
    expect(on.filter((k) => k === found.units - 1)).toHaveLength(AROUND);
    for (let h = 0; h < opposite.length; h++) expect(opposite[opposite[h]]).toBe(h);
    expect(found.slot[nextEdge(opposite[0])]).toBe(found.slot[0]);
  });
});
