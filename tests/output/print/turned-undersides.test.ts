import { describe, expect, it } from "vitest";
import { concatMeshes, type Mesh } from "../../../src/mesh/mesh.js";
import { type TurnPart, turnRound } from "../../../src/mesh/turn-round.js";
import { type Turned, turnedImages } from "../../../src/mesh/turned.js";
import { findTurnedUndersides } from "../../../src/output/print/turned-undersides.js";
import { findUndersides, type UndersidePlace } from "../../../src/output/print/undersides.js";
import { box } from "../../support/meshes.js";
import { sector } from "../../support/sector.js";

const alone = (mesh: Mesh): TurnPart => ({ mesh, follows: new Int32Array(mesh.positions.length / 3).fill(-1) });

/** A ring of boxes, each of which goes on in the next but so many: so many places go round it in each other. */
function chains(units: number, leap: number): Mesh {
  const mesh = turnRound(sector(units), units);
  const own = mesh.positions.length / 3 / units;
  const all = own * units;
  const on = (vertex: number, i: number) => {
    const base = Math.floor(i / (mesh.triangles.length / units)) * own;
    const far = (vertex - base + all) % all >= own;
    return far ? (vertex + (leap - 1) * own) % all : vertex;
  };
  return { positions: mesh.positions, triangles: mesh.triangles.map(on) };
}

const rounded = ({ at, area, height }: UndersidePlace) =>
  [area, height, at[2], Math.hypot(at[0], at[1])].map((x) => x.toFixed(9)).join(" ");
const places = (found: readonly UndersidePlace[]) => found.map(rounded).sort();

const rings: readonly (readonly [string, Mesh, number])[] = [
  ["a torus, one place all round", turnRound(sector(5), 5), 5],
  ["boxes that hang free, a place each", turnRound(alone(box([1, 1, 1], [9, 0, 3])), 7), 7],
  [
    "boxes that stand on the plate and boxes that hang",
    turnRound(alone(concatMeshes([box([1, 1, 1], [9, 0, 0]), box([1, 2, 1], [9, 1, 5])])), 6),
    6,
  ],
  ["two rings in each other", chains(6, 2), 6],
  ["three rings in each other", chains(6, 3), 6],
  ["one ring that goes round twice", chains(5, 2), 5],
];

describe("undersides of a ring of units", () => {
  it.each(rings)("are those of the whole: %s", (_, mesh, units) => {
    for (const support of [10, 45, 60]) {
      const found = findTurnedUndersides(turnedImages(mesh, units) as Turned, support);
      const whole = findUndersides(mesh, { support });
      for (const figure of ["area", "share", "resting"] as const) expect(found[figure]).toBeCloseTo(whole[figure], 9);
      expect(places(found.places)).toEqual(places(whole.places));
      expect(found.places.map(({ area }) => area)).toEqual(found.places.map(({ area }) => area).sort((a, b) => b - a));
    }
  });

  it("lie where the whole's do", () => {
    const mesh = turnRound(alone(concatMeshes([box([1, 1, 1], [9, 0, 0]), box([1, 2, 1], [9, 1, 5])])), 7);
    const angles = (found: readonly UndersidePlace[]) =>
      found.map(({ at: [x, y] }) => Math.atan2(y, x).toFixed(9)).sort();
    const { places: own } = findTurnedUndersides(turnedImages(mesh, 7) as Turned, 45);
    // A box between two more: each has the middle of its underside.
    expect(own).toHaveLength(7);
    expect(angles(own)).toEqual(angles(findUndersides(mesh, { support: 45 }).places));
  });
});
