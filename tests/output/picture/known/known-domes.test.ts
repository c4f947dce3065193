// Covers: src/output/picture/known/inset.ts, src/output/picture/known/slope.ts
import { describe, expect, it } from "vitest";
import { SideGrid, sidesOf } from "../../../../src/output/picture/known/inset.js";
import { knownDomes } from "../../../../src/output/picture/known/known-domes.js";
import { chordsOf } from "../../../../src/output/picture/known/slope.js";
import { bodiesOf } from "../../../support/stages.js";

const [HEIGHT, WALL] = [0.7, 0.2];

/** A disc on a dome's band, under a dome: the cap of a sphere, bent round the band. */
const document = {
  annulet: 1,
  size: { system: "iso", value: 55 },
  tolerance: 0.01,
  profile: {
    width: 6,
    thickness: 2,
    bore: { form: "flat", edge: 0.3 },
    outside: { form: "domed", rise: 0.5, edge: 0.3 },
  },
  pattern: {
    fit: { repeats: 9 },
    symmetry: "p1",
    regions: [
      {
        name: "disc",
        path: "M 0.5 -0.25 A 0.25 0.25 0 1 1 0.5 0.25 A 0.25 0.25 0 1 1 0.5 -0.25 Z",
        section: { form: "domed", height: HEIGHT, wall: WALL },
      },
    ],
  },
};

describe("a dome's known surface", () => {
  it("is that of the sphere's cap over a disc, bent round the band, in every tile", () => {
    const { pattern, wrap } = bodiesOf(document);
    const points = pattern.bodies[0].outline.flat(2);
    const us = points.map(([u]) => u);
    const vs = points.map(([, v]) => v);
    const [u0, v0] = [(Math.min(...us) + Math.max(...us)) / 2, (Math.min(...vs) + Math.max(...vs)) / 2];
    const reach = (Math.max(...vs) - Math.min(...vs)) / 2;
    const radius = (reach ** 2 + (HEIGHT - WALL) ** 2) / (2 * (HEIGHT - WALL));
    const cap = (u: number, v: number) =>
      HEIGHT - radius + Math.sqrt(Math.max(0, radius ** 2 - (u - u0) ** 2 - (v - v0) ** 2));
    const known = knownDomes(pattern, wrap, 0.01);
    for (const tile of [0, 1, 5, 8]) {
      const point = (u: number, v: number) => wrap.forward(u + (tile * wrap.round) / 9, v, cap(u, v));
      for (const share of [0.15, 0.4, 0.65, 0.9]) {
        for (const turn of [0.3, 1.9, 3.3, 5.1]) {
          const [u, v] = [u0 + share * reach * Math.cos(turn), v0 + share * reach * Math.sin(turn)];
          // The normal by small steps on the bent cap, without any formula.
          const step = 1e-5;
          const [a, b, c] = [point(u, v), point(u + step, v), point(u, v + step)];
          const [p, q] = [b.map((value, k) => value - a[k]), c.map((value, k) => value - a[k])];
          const cross = [0, 1, 2].map((k) => p[(k + 1) % 3] * q[(k + 2) % 3] - p[(k + 2) % 3] * q[(k + 1) % 3]);
          const length = Math.hypot(...cross);
          const cosines: number[] = [];
          known(a[0], a[1], a[2], (x, y, z) => cosines.push((x * cross[0] + y * cross[1] + z * cross[2]) / length));
          expect(cosines).toHaveLength(1);
          // Within a degree and a half: the outline is chords, and heights stretch the band across by a hundredth.
          expect(cosines[0]).toBeGreaterThan(Math.cos(0.026));
        }
      }
      const told: number[] = [];
      // Nothing beside it, and nothing half a dome's height off it.
      for (const [u, v, h] of [
        [u0 + 1.2 * reach, v0, WALL],
        [u0, v0 + 0.5 * reach, 0.2],
      ] as const) {
        known(...wrap.forward(u + (tile * wrap.round) / 9, v, h), (x) => told.push(x));
      }
      expect(told).toEqual([]);
    }
  });
});

describe("a section's steepness", () => {
  it("is that of the circle whose chords it is, at both ends too, whatever lies on a chord between", () => {
    const sweep = 0.8;
    const at = (angle: number): [number, number] => [2 * (Math.sin(sweep) - Math.sin(angle)), 2 * Math.cos(angle)];
    const knots = [0.8, 0.6, 0.4, 0.2, 0].map(at);
    const middle: [number, number] = [(knots[3][0] + knots[4][0]) / 2, (knots[3][1] + knots[4][1]) / 2];
    for (const points of [knots, [...knots.slice(0, 4), middle, knots[4]]]) {
      const chords = chordsOf(points);
      expect(chords).toHaveLength(4);
      chords.forEach(({ steepness }, i) => {
        expect(steepness[0]).toBeCloseTo(0.8 - 0.2 * i, 9);
        expect(steepness[1]).toBeCloseTo(0.6 - 0.2 * i, 9);
      });
    }
  });

  it("does not run round an edge", () => {
    const [wall, top] = chordsOf([
      [0, 0],
      [0.01, 0.5],
      [1, 0.5],
    ]);
    expect(wall.steepness[1]).toBeCloseTo(Math.atan2(0.5, 0.01), 9);
    expect(top.steepness[0]).toBeCloseTo(0, 9);
  });
});

describe("the way in from an outline", () => {
  it("turns evenly along an arc's chords, and not at all at a square's corners", () => {
    const circle = Array.from({ length: 24 }, (_, i): [number, number] => {
      const angle = (2 * Math.PI * i) / 24;
      return [2 * Math.cos(angle), 2 * Math.sin(angle)];
    });
    const round = new SideGrid(sidesOf(circle), 1);
    for (const angle of [0, 0.07, 0.2, 1, 3]) {
      const inset = round.insetAt(1.5 * Math.cos(angle), 1.5 * Math.sin(angle));
      expect(inset?.way[0]).toBeCloseTo(-Math.cos(angle), 3);
      expect(inset?.way[1]).toBeCloseTo(-Math.sin(angle), 3);
      expect(inset?.distance).toBeCloseTo(0.5, 1);
    }
    expect(round.insetAt(2.2, 0)).toBeUndefined();
    expect(round.insetAt(0.5, 0)).toBeUndefined();
    const square = new SideGrid(
      sidesOf([
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ]),
      1,
    );
    for (const u of [0.4, 2, 3.6]) expect(square.insetAt(u, 0.3)).toEqual({ distance: 0.3, way: [0, 1] });
  });
});
