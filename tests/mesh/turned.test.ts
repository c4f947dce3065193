import { describe, expect, it } from "vitest";
import type { Mesh } from "../../src/mesh/mesh.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { findTurned, firstUnit, imagesOf, type Turned, turnedImages, usesAll } from "../../src/mesh/turned.js";
import { sector } from "../support/sector.js";

const UNITS = 5;
const ring = () => turnRound(sector(UNITS), UNITS);
const seen = (mesh: Mesh, units = UNITS) => turnedImages(mesh, units);

/** A ring with two of its units' vertices exchanged, triangles left as they were. */
function exchanged(): Mesh {
  const mesh = ring();
  const length = mesh.positions.length / UNITS;
  const first = mesh.positions.slice(length, 2 * length);
  mesh.positions.copyWithin(length, 3 * length, 4 * length);
  mesh.positions.set(first, 3 * length);
  return mesh;
}

describe("turned images", () => {
  it.each([2, 3, 5, 28])("are seen of a ring of %i units", (units) => {
    const mesh = turnRound(sector(units), units);
    const turned = seen(mesh, units) as Turned;
    expect(turned).toMatchObject({ units, own: mesh.positions.length / 3 / units });
    expect(firstUnit(turned).triangles).toHaveLength(mesh.triangles.length / units);
    expect(usesAll(turned)).toBe(true);
  });

  it.each([1e-6, 1e-3, 1e-9, Number.NaN])("are not where one vertex of one copy lies %f mm off", (off) => {
    for (const at of [0, 1, 2, 40, 100, 3 * 24 * UNITS - 1]) {
      const mesh = ring();
      mesh.positions[at] += off;
      expect(seen(mesh)).toBeUndefined();
    }
  });

  it("are not where a vertex of every copy is no number", () => {
    const mesh = ring();
    for (let k = 0; k < UNITS; k++) mesh.positions[(k * mesh.positions.length) / UNITS] = Number.NaN;
    expect(seen(mesh)).toBeUndefined();
  });

  it("are not where two copies are exchanged, one is dropped, doubled or turned over", () => {
    const mesh = ring();
    const each = mesh.triangles.length / UNITS;
    const with_ = (triangles: Uint32Array): Mesh => ({ positions: mesh.positions, triangles });
    const doubled = mesh.triangles.slice();
    doubled.copyWithin(each, 0, each);
    const over = mesh.triangles.slice();
    over.subarray(each, each + 3).reverse();
    expect(seen(exchanged())).toBeUndefined();
    expect(seen(with_(mesh.triangles.slice(0, -each)))).toBeUndefined();
    expect(seen(with_(mesh.triangles.slice(0, -each)), UNITS - 1)).toBeUndefined();
    expect(seen(with_(doubled))).toBeUndefined();
    expect(seen(with_(over))).toBeUndefined();
  });

  it("are not of other numbers of units, nor of one or none", () => {
    for (const units of [1, 3, 6, 7, 1000]) expect(seen(ring(), units)).toBeUndefined();
    expect(seen({ positions: new Float64Array(0), triangles: new Uint32Array(0) })).toBeUndefined();
  });

  it("of a triangle are those of the whole mesh", () => {
    const turned = seen(ring()) as Turned;
    const { positions, triangles } = imagesOf(turned, [0, 47]);
    const { mesh } = turned;
    const corner = (h: number) => [...mesh.positions.subarray(3 * mesh.triangles[h], 3 * mesh.triangles[h] + 3)];
    const expected = [0, 1, 2, 3, 4].flatMap((k) => [0, 1, 2, 141, 142, 143].flatMap((i) => corner(144 * k + i)));
    expect([...positions]).toEqual(expected);
    expect(triangles).toHaveLength(UNITS * 2 * 3);
    expect([...imagesOf(turned, [3], Math.fround).positions]).toEqual(
      [...imagesOf(turned, [3]).positions].map(Math.fround),
    );
  });

  it("are found without being told how many, in every way in which they can be seen", () => {
    const found = (mesh: Mesh) => [...findTurned(mesh)].map(({ units }) => units);
    // Each unit of the torus is of four columns, which are alike too.
    expect(found(ring())).toEqual([20, 10, 5, 4, 2]);
    const mesh = ring();
    for (let k = 0; k < UNITS; k++) mesh.positions[(k * mesh.positions.length) / UNITS + 2] += 0.1;
    expect(found(mesh)).toEqual([UNITS]);
    mesh.positions[3] += 1e-6;
    expect(found(mesh)).toEqual([]);
    expect(found(exchanged())).toEqual([]);
    expect(found({ positions: new Float64Array(0), triangles: new Uint32Array(0) })).toEqual([]);
  });
});
