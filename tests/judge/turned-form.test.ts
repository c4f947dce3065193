import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { checkTurnedForms, type TurnedForms } from "../../src/judge/turned-form.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { turnedImages } from "../../src/mesh/turned.js";
import { sector } from "../support/sector.js";

const UNITS = 5;

/**
 * A ring each of whose units has one more point beside the middle of an edge between two rows, `off` mm above it: the two
 * triangles at that edge become three and a thin one, which lies on the edge.
 */
function withThin(off: number, units = UNITS): Mesh {
  const { mesh, follows } = sector(units);
  const [a, b] = [7, 13];
  const { positions: p } = mesh;
  const more = [0, 1, 2].map((k) => (p[3 * a + k] + p[3 * b + k]) / 2);
  const length = Math.hypot(more[0], more[1]);
  more[0] += (off * more[0]) / length;
  more[1] += (off * more[1]) / length;
  const added = p.length / 3;
  const triangles: number[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = [...mesh.triangles.subarray(t, t + 3)];
    const at = corners.findIndex((v, i) => v === a && corners[(i + 1) % 3] === b);
    if (at === -1) triangles.push(...corners);
    else triangles.push(a, added, corners[(at + 2) % 3], added, b, corners[(at + 2) % 3], a, b, added);
  }
  const part = { positions: Float64Array.from([...p, ...more]), triangles: Uint32Array.from(triangles) };
  return turnRound({ mesh: part, follows: Int32Array.from([...follows, -1]) }, units);
}

const formsOf = (mesh: Mesh, units = UNITS): TurnedForms | undefined => {
  const turned = turnedImages(mesh, units);
  return turned && checkTurnedForms(turned);
};

/** What is read of the unit is what is read of the whole. */
function expectWhole(mesh: Mesh, units = UNITS): void {
  const forms = formsOf(mesh, units) as TurnedForms;
  const { float32, ...exact } = checkSolid(mesh);
  expect(forms.exact).toEqual({ ...exact, volume: forms.exact.volume });
  expect(forms.float32).toEqual({ ...float32, volume: forms.float32.volume });
  expect(forms.exact.volume).toBeCloseTo(exact.volume, 9);
  expect(forms.float32.volume).toBeCloseTo(float32.volume, 3);
}

describe("both forms of a ring of units", () => {
  it.each([2, 5, 28])("are those of the whole, to the last bit of angle and edge: %i units", (units) => {
    expectWhole(turnRound(sector(units), units), units);
  });

  it.each([1e-2, 1e-4, 1e-5, 6e-6, 3e-6])("with a thin triangle of %f mm too", (off) => {
    expectWhole(withThin(off));
  });

  it("leave a triangle that collapses in single precision to the whole, in however few copies", () => {
    let [some, none] = [0, 0];
    for (let i = 1; i <= 40; i++) {
      for (const units of [5, 9]) {
        const mesh = withThin(i * 5e-8, units);
        const { faults } = checkSolid(mesh).float32;
        const copies = faults.find(({ code }) => code === "zero-area")?.count ?? 0;
        if (copies > 0 && copies < units) some++;
        if (copies === 0) none++;
        expect(formsOf(mesh, units) === undefined).toBe(faults.length > 0);
        expect(checkSolid(mesh, { units }).float32.faults).toEqual(faults);
      }
    }
    // Some collapse in a few copies alone, and some that are as thin in none.
    expect(some).toBeGreaterThan(2);
    expect(none).toBeGreaterThan(0);
  });

  it("leave a shape that is inside out to the whole, and one without volume", () => {
    const inside = turnRound(sector(UNITS), UNITS);
    for (let i = 2; i < inside.positions.length; i += 3) inside.positions[i] *= -1;
    expect(turnedImages(inside, UNITS)).toBeDefined();
    expect(formsOf(inside)).toBeUndefined();
    const flat = turnRound(sector(UNITS), UNITS);
    for (let i = 2; i < flat.positions.length; i += 3) flat.positions[i] = 0;
    expect(formsOf(flat)).toBeUndefined();
  });

  it.each([1e-6, 1e-3, 1])("of a ring with one vertex %f mm off are read whole", (off) => {
    const mesh = turnRound(sector(UNITS), UNITS);
    mesh.positions[3 * 24 + 1] += off;
    expect(formsOf(mesh)).toBeUndefined();
    expect(checkSolid(mesh, { units: UNITS })).toEqual(checkSolid(mesh));
  });

  it("of a seam whose points fall together are read whole", () => {
    const mesh = turnRound(sector(UNITS), UNITS);
    const own = mesh.positions.length / UNITS;
    // The second point of each seam comes to lie on the first.
    for (let k = 0; k < UNITS; k++) mesh.positions.copyWithin(k * own + 3, k * own, k * own + 3);
    expect(turnedImages(mesh, UNITS)).toBeDefined();
    expect(formsOf(mesh)).toBeUndefined();
    const check = checkSolid(mesh, { units: UNITS });
    expect(check.closed).toBe(false);
    expect(check).toEqual(checkSolid(mesh));
  });
});
