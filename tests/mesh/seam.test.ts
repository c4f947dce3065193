import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { joinSeam } from "../../src/mesh/seam.js";
import { END, START, turnRound } from "../../src/mesh/turn-round.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { SEED } from "../band/profile/specs.js";
import { sectorOf } from "../mesh/sectors.js";
import { failureOf } from "../support/failure-of.js";
import { torus } from "../support/meshes.js";

const [UNITS, ACROSS] = [5, 7];
const whole = torus(6, 1.4, 4 * UNITS, ACROSS);
const { mesh: sector, follows } = sectorOf(whole, UNITS, ACROSS);

/** The sector with marks, and points of its own on the sides of its rims. */
function unitWith(
  points: readonly { readonly end: boolean; readonly side: number; readonly share: number; readonly aside: number }[],
) {
  const positions = [...sector.positions];
  const triangles = [...sector.triangles];
  const marks = [...follows].map((start, v) => (start !== -1 ? END : v < ACROSS ? START : 0));
  for (const { end, side, share, aside } of points) {
    const bit = end ? END : START;
    // The side's number counts rim edges as they are by then.
    const sides = triangles.flatMap((a, h) => {
      const b = triangles[h % 3 === 2 ? h - 2 : h + 1];
      const isRim = marks[a] === bit && marks[b] === bit;
      return isRim ? [{ h, a, b }] : [];
    });
    const { h, a, b } = sides[side % sides.length];
    const apex = triangles[h % 3 === 0 ? h + 2 : h - 1];
    const added = positions.length / 3;
    for (let k = 0; k < 3; k++)
      positions.push(positions[3 * a + k] + share * (positions[3 * b + k] - positions[3 * a + k]));
    positions[3 * added + 2] += aside;
    marks.push(bit);
    triangles.splice(h - (h % 3), 3, a, added, apex, added, b, apex);
  }
  return {
    mesh: { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) },
    marks: Uint8Array.from(marks),
  };
}

/** The triangles with other ones in place of those at a vertex. */
function retriangulated(triangles: Uint32Array, vertex: number, instead: readonly number[]): Uint32Array {
  const kept = triangles.filter((_, i) => !triangles.subarray(i - (i % 3), i - (i % 3) + 3).includes(vertex));
  return Uint32Array.from([...kept, ...instead]);
}

const TURN = (2 * Math.PI) / UNITS;

describe("the seam of a unit", () => {
  it("makes points that meet one", () => {
    const part = joinSeam(unitWith([]), TURN);
    expect(part.follows).toEqual(follows);
    expect(part.mesh).toEqual(sector);
  });

  it("puts points that only one rim has into the other, so that the ring is closed", () => {
    const point = fc.record({
      end: fc.boolean(),
      side: fc.nat(40),
      share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      aside: fc.double({ min: -2e-4, max: 2e-4, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(point, { maxLength: 12 }), (points) => {
        const unit = unitWith(points);
        const ring = turnRound(joinSeam(unit, TURN), UNITS);
        expect(checkSolid(ring)).toMatchObject({ closed: true, genus: 1 });
        expect(ring.positions.length / 3).toBeLessThanOrEqual(whole.positions.length / 3 + UNITS * points.length);
        expect(Math.abs(signedVolume(ring) / signedVolume(whole) - 1)).toBeLessThan(1e-4);
      }),
      { seed: SEED },
    );
  });

  it("has as many new points as either rim had of its own", () => {
    const points = [0.3, 0.6].flatMap((share) =>
      [true, false].map((end, i) => ({ end, side: 2 + 3 * i, share, aside: 0 })),
    );
    const ring = turnRound(joinSeam(unitWith(points), TURN), UNITS);
    expect(ring.positions.length / 3).toBe(whole.positions.length / 3 + UNITS * points.length);
  });

  it("puts points into two sides of one triangle", () => {
    // Points of its own for each of the end's sides; the start's rim runs from 1 over 2 to 3.
    const points = [0, 1, 2, 3, 4, 5, 6].map((side) => ({ end: true, side: 2 * side, share: 0.5, aside: 0 }));
    const unit = unitWith(points);
    const next = new Map<number, number>();
    const { triangles } = unit.mesh;
    triangles.forEach((vertex, h) => {
      if (vertex === 2) next.set(triangles[h % 3 === 2 ? h - 2 : h + 1], triangles[h % 3 === 0 ? h + 2 : h - 1]);
    });
    const ends = [...next.values()];
    const around = [...next.keys()].filter((from) => !ends.includes(from));
    while (next.has(around[around.length - 1])) around.push(next.get(around[around.length - 1]) as number);
    const [first, last] = [around[0], around[around.length - 1]];
    expect([first, last].sort()).toEqual([1, 3]);
    // The triangles at the vertex give way to others, of which one alone has it, with two sides in the rim.
    const instead = [2, first, last, ...around.slice(1, -1).flatMap((_, i) => [first, around[i + 1], around[i + 2]])];
    const mesh = { ...unit.mesh, triangles: retriangulated(triangles, 2, instead) };
    const ring = turnRound(joinSeam({ mesh, marks: unit.marks }, TURN), UNITS);
    expect(checkSolid(ring)).toMatchObject({ faults: [], components: 1, genus: 1 });
    expect(ring.positions.length / 3).toBe(whole.positions.length / 3 + UNITS * points.length);
  });

  it("is refused where the rims are no images of each other", () => {
    const unit = unitWith([]);
    const { positions } = unit.mesh;
    const moved = positions.slice();
    unit.marks.forEach((mark, v) => {
      if (mark === END) moved[3 * v + 2] *= 1.01;
    });
    expect(failureOf(() => joinSeam({ ...unit, mesh: { ...unit.mesh, positions: moved } }, TURN)).code).toBe(
      "seam-mismatch",
    );
    expect(failureOf(() => joinSeam(unit, TURN * 1.01)).code).toBe("seam-mismatch");
  });

  it("is refused where one end has a rim more", () => {
    const unit = unitWith([]);
    const open = { ...unit, marks: unit.marks.map((mark) => (mark === END ? 0 : mark)) };
    expect(failureOf(() => joinSeam(open, TURN))).toMatchObject({
      code: "seam-mismatch",
      value: { starts: 1, ends: 0 },
    });
  });
});
