import { describe, expect, it } from "vitest";
import { after, before } from "../../src/base/math/half-space.js";
import { checkSolid } from "../../src/judge/gate.js";
import { capMesh } from "../../src/mesh/cap.js";
import { END, START, turnChain, turnRound } from "../../src/mesh/turn-round.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { surfaceKey, torus } from "../support/meshes.js";
import { sectorOf } from "./sectors.js";

const [PLACES, FACETS, ACROSS] = [6, 4, 7];
const whole = torus(5, 1.3, PLACES * FACETS, ACROSS);
const part = sectorOf(whole, PLACES, ACROSS);

describe("a part turned to each place", () => {
  it("is the whole again, point by point", () => {
    const round = turnRound(part, PLACES);
    expect(checkSolid(round)).toMatchObject({ closed: true, genus: 1 });
    expect(round.positions).toHaveLength(whole.positions.length);
    const near = (mesh: typeof whole) =>
      surfaceKey({ ...mesh, positions: mesh.positions.map((v) => Math.round(v * 1e9)) });
    expect(near(round)).toEqual(near(whole));
  });

  it("ends in points of the next: no point twice", () => {
    const { positions } = turnRound(part, PLACES);
    const places = Array.from({ length: positions.length / 3 }, (_, i) =>
      [...positions.subarray(3 * i, 3 * i + 3)].map((v) => v.toFixed(9)).join(" "),
    );
    expect(new Set(places).size).toBe(places.length);
  });
});

describe("a part turned to some places", () => {
  it.each([
    [0, 1],
    [2, 3],
    [4, 5],
  ])("from place %i, %i of them, is their share of the whole, and marked at its ends", (first, count) => {
    const { mesh, marks } = turnChain(part, PLACES, first, count);
    const at = (place: number) => (2 * Math.PI * place) / PLACES;
    const closed = [[after(at(first)), START] as const, [before(at(first + count)), END] as const].reduce(
      (open, [plane, bit]) => capMesh(open, plane, (v) => (marks[v] & bit) !== 0),
      mesh,
    );
    expect(checkSolid(closed)).toMatchObject({ closed: true, genus: 0 });
    expect(signedVolume(closed)).toBeCloseTo((signedVolume(whole) * count) / PLACES, 10);
    for (const bit of [START, END]) expect(marks.filter((mark) => mark === bit)).toHaveLength(ACROSS);
  });
});
