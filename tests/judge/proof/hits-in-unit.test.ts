import { describe, expect, it } from "vitest";
import { type HalfPlaneLine, insideAlong } from "../../../src/judge/proof/hits.js";
import { insideUnits } from "../../../src/judge/proof/hits-in-unit.js";
import { concatMeshes, type Mesh } from "../../../src/mesh/mesh.js";
import { turnRound } from "../../../src/mesh/turn-round.js";
import { type Turned, turnedImages } from "../../../src/mesh/turned.js";
import { box } from "../../support/meshes.js";
import { sector } from "../../support/sector.js";

/** Lines at uneven angles and heights, straight and leaning. */
const lines = Array.from({ length: 300 }, (_, i): HalfPlaneLine => {
  const lean = 0.6 * Math.sin(i);
  const angle = (i * 2.399963) % (2 * Math.PI);
  return { angle, point: [0.9 * Math.sin(7 * i), 9], way: [Math.sin(lean), Math.cos(lean)], span: [-6, 6] };
});

/** Boxes that stand across the planes between units, each over more than one unit's angles. */
function wide(units: number): Mesh {
  const mesh = concatMeshes([box([1, 3, 1], [8, -2.5, -0.5]), box([1, 6, 1], [10, -1, -0.5])]);
  return turnRound({ mesh, follows: new Int32Array(mesh.positions.length / 3).fill(-1) }, units);
}

describe("lines through a ring of units", () => {
  it.each([
    ["a torus of 3", turnRound(sector(3), 3), 3],
    ["a torus of 5", turnRound(sector(5), 5), 5],
    ["a torus of 28", turnRound(sector(28), 28), 28],
    ["boxes over several units", wide(13), 13],
  ])("meet what they meet of the whole: %s", (_, mesh, units) => {
    const own = insideUnits(turnedImages(mesh, units) as Turned, lines);
    const whole = insideAlong(mesh, lines);
    expect(whole.filter((spans) => spans !== undefined && spans.length > 0).length).toBeGreaterThan(100);
    expect(own).toHaveLength(lines.length);
    for (const [i, spans] of whole.entries()) {
      expect(own?.[i]?.length).toBe(spans?.length);
      for (const [k, t] of (spans ?? []).entries()) expect(own?.[i]?.[k]).toBeCloseTo(t, 9);
    }
  });

  it("are left to the whole where a unit reaches round half of it", () => {
    expect(insideUnits(turnedImages(turnRound(sector(2), 2), 2) as Turned, lines)).toBeUndefined();
  });
});
