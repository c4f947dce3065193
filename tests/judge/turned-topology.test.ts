import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { readTopology } from "../../src/judge/topology.js";
import { readTurnedTopology, type TurnedTopology } from "../../src/judge/turned-topology.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { type Turned, turnedImages } from "../../src/mesh/turned.js";
import { AROUND, COLUMNS, sector } from "../support/sector.js";

const UNITS = 5;
const ring = () => turnRound(sector(UNITS), UNITS);

/** The same change of every unit's triangles, so that the units stay alike by index. */
function inEachUnit(
  change: (corners: number[], own: number, all: number) => number[],
  mesh = ring(),
  units = UNITS,
): Mesh {
  const vertices = mesh.positions.length / 3;
  const each = mesh.triangles.length / units;
  const changed = change(Array.from(mesh.triangles.subarray(0, each)), vertices / units, vertices);
  const triangles = Array.from({ length: units }, (_, k) =>
    changed.map((v) => (v + (k * vertices) / units) % vertices),
  );
  return { positions: mesh.positions, triangles: Uint32Array.from(triangles.flat()) };
}

/** Two rings in one mesh, whose triangles lead from each unit to the next but one. */
function everyOther(units: number): Mesh {
  const mesh = turnRound(sector(units), units);
  const own = mesh.positions.length / 3 / units;
  const leap = (corners: number[]) => corners.map((v) => (v >= own ? v + own : v));
  return inEachUnit(leap, mesh, units);
}

/** What is read of so many units; undefined where there are none. */
function topologyOf(mesh: Mesh, units: number): TurnedTopology | undefined {
  const turned = turnedImages(mesh, units);
  return turned && readTurnedTopology(turned);
}

/** The same findings: what is a sum to twelve digits, the rounded form's volume to a step of float32 times the surface. */
function expectSameCheck(mesh: Mesh, units: number): void {
  const [own, whole] = [checkSolid(mesh, { units }), checkSolid(mesh)];
  const bare = ({ volume, float32, ...rest }: typeof own) => ({ ...rest, float32: { ...float32, volume: 0 } });
  expect(bare(own)).toEqual(bare(whole));
  if (Number.isNaN(whole.volume)) return;
  expect(Math.abs(own.volume - whole.volume)).toBeLessThanOrEqual(1e-12 * Math.abs(whole.volume));
  expect(Math.abs(own.float32.volume - whole.float32.volume)).toBeLessThanOrEqual(1e-6 * Math.abs(whole.volume));
}

const faulty: readonly (readonly [string, Mesh])[] = [
  ["a hole in each unit", inEachUnit((corners) => corners.slice(3))],
  ["a hole in each unit, at the seam", inEachUnit((corners) => corners.slice(0, -3))],
  ["a triangle twice in each unit", inEachUnit((corners) => [...corners, ...corners.slice(0, 3)])],
  ["a triangle and its reverse more", inEachUnit((corners) => [...corners, 0, 6, 1, 1, 6, 0])],
  ["a triangle turned over", inEachUnit(([a, b, c, ...rest]) => [b, a, c, ...rest])],
  ["a repeated vertex", inEachUnit(([a, b, , ...rest]) => [a, b, b, ...rest])],
  ["a vertex that is not there", inEachUnit((corners, _, all) => corners.map((v, i) => (i === 0 ? all + 9 : v)))],
  ["a seam that meets itself in a point", inEachUnit((corners) => corners.map((v) => (v === 3 ? 0 : v)))],
  ["a seam that meets the next one in a point", inEachUnit((corners, own) => corners.map((v) => (v === 12 ? own : v)))],
  ["each unit a piece of its own", inEachUnit((corners, own) => corners.map((v) => v % own))],
  ["two rings in each other", everyOther(6)],
];

const odd: readonly (readonly [string, (triangles: Uint32Array) => void])[] = [
  ["one unit's hole, a triangle of another twice", (t) => t.copyWithin(0, 150, 153)],
  ["one triangle turned over in the last unit", (t) => t.subarray(-3).reverse()],
  ["one corner of one unit elsewhere", (t) => t.set([t[200] + 1], 200)],
];

describe("the topology of a unit's images", () => {
  it.each([2, 3, 5, 28])("is that of the whole ring of %i units", (units) => {
    const mesh = turnRound(sector(units), units);
    const { vertices, edges, kept } = readTopology(mesh);
    expect(topologyOf(mesh, units)).toEqual({ vertices, edges: edges.count, triangles: kept });
    expectSameCheck(mesh, units);
    expect(checkSolid(mesh, { units })).toMatchObject({ closed: true, genus: 1 });
  });

  it("is one piece where steps to the next unit but one reach all of an odd number", () => {
    // By index: its rows lie where other units' are, so that it is no turned images.
    const turned = turnedImages(ring(), UNITS) as Turned;
    const { mesh } = turned;
    const leap = (corner: number, i: number) => (turned.unit[i] === 1 ? corner + turned.own : corner);
    const unit = turned.unit.map((k) => 2 * k);
    const leaping = { ...turned, corners: turned.corners.map(leap), unit };
    expect(readTurnedTopology(leaping)).toEqual(readTurnedTopology(turned));
    expect(readTopology(everyOther(5)).shells.count).toBe(1);
    expect(mesh.positions).toEqual(everyOther(5).positions);
  });

  it("counts the vertices that are used", () => {
    const mesh = ring();
    const own = mesh.positions.length / 3 / UNITS;
    const positions = new Float64Array((own + 1) * 3 * UNITS);
    for (let k = 0; k < UNITS; k++) {
      positions.set(mesh.positions.subarray(3 * k * own, 3 * (k + 1) * own), 3 * k * (own + 1));
      positions.set([20 + k, 0, 0], 3 * (k * (own + 1) + own));
    }
    const more = { positions, triangles: mesh.triangles.map((v) => v + Math.floor(v / own)) };
    expect(topologyOf(more, UNITS)).toBeUndefined();
    for (let k = 0; k < UNITS; k++) {
      const angle = (2 * Math.PI * k) / UNITS;
      positions.set([20 * Math.cos(angle), 20 * Math.sin(angle), 0], 3 * (k * (own + 1) + own));
    }
    expect(topologyOf(more, UNITS)?.vertices).toBe(own * UNITS);
    expectSameCheck(more, UNITS);
  });
});

describe("what the images do not close", () => {
  it.each(faulty)("finds %s", (_, mesh) => {
    const units = mesh.positions.length / 3 / (COLUMNS * AROUND);
    expect(topologyOf(mesh, units)).toBeUndefined();
    const check = checkSolid(mesh, { units });
    expect(check.closed).toBe(false);
    expect(check).toEqual(checkSolid(mesh));
  });

  it.each(odd)("does not take units for alike: %s", (_, change) => {
    const mesh = ring();
    const triangles = mesh.triangles.slice();
    change(triangles);
    const changed = { positions: mesh.positions, triangles };
    expect(topologyOf(changed, UNITS)).toBeUndefined();
    expect(checkSolid(changed, { units: UNITS }).closed).toBe(false);
    expect(checkSolid(changed, { units: UNITS })).toEqual(checkSolid(changed));
  });

  it.each([3, 7, 8, 1000])("is not fooled by %i units where there are 5 of 24 vertices", (units) => {
    expect(topologyOf(ring(), units)).toBeUndefined();
    expect(checkSolid(ring(), { units })).toEqual(checkSolid(ring()));
  });

  it("still sees points that lie wrong: two that coincide, a triangle without area, a shape turned inside out", () => {
    const coincide = ring();
    coincide.positions.copyWithin(0, 30, 33);
    const flat = ring();
    for (let k = 0; k < 3; k++) flat.positions[k] = (flat.positions[18 + k] + flat.positions[3 + k]) / 2;
    const inside = ring();
    for (let i = 2; i < inside.positions.length; i += 3) inside.positions[i] *= -1;
    for (const mesh of [coincide, flat, inside]) {
      expect(checkSolid(mesh, { units: UNITS }).closed).toBe(false);
      expect(checkSolid(mesh, { units: UNITS })).toEqual(checkSolid(mesh));
    }
  });

  it.each([0, 1.5, Number.NaN])("refuses %s units", (units) => {
    expect(() => checkSolid(ring(), { units })).toThrow(expect.objectContaining({ code: "option-invalid" }));
  });
});
