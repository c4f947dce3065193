// Covers: src/design/shapes/turns.ts
import { describe, expect, it } from "vitest";
import { circle } from "../../flat/strips.js";
import { box, drawShape } from "./shapes.js";

/** Area that two circles of one radius share, their centres `d` apart (any table of circular segments). */
function lens(radius: number, d: number): number {
  return 2 * radius ** 2 * Math.acos(d / (2 * radius)) - (d / 2) * Math.sqrt(4 * radius ** 2 - d ** 2);
}

describe("turned copies", () => {
  it.each([2, 3, 5, 12, 36])("%i that lie apart have so many times the area", (turns) => {
    const { drawn, area } = drawShape({ turns, of: { path: circle(0.8, 0, 0.02) } });
    expect(drawn.closed).toHaveLength(turns);
    const one = Math.PI * 0.12 ** 2;
    expect(area / (turns * one)).toBeGreaterThan(0.9);
    expect(area / (turns * one)).toBeLessThan(1);
    expect(area).toBeCloseTo(turns * drawShape({ path: circle(0.8, 0, 0.02) }).area, 6);
  });

  it("that overlap are one: circles in a ring share a lens with each neighbour (closed form)", () => {
    const [turns, radius, ring] = [9, 0.1, 0.25];
    const { drawn, area } = drawShape(
      { turns, about: [0.5, 0], of: { path: circle(0.5 + ring, 0, radius) } },
      { tolerance: 1e-4 },
    );
    expect(drawn.closed).toHaveLength(2);
    const chord = 2 * ring * Math.sin(Math.PI / turns);
    expect(area / 36).toBeCloseTo(turns * (Math.PI * radius ** 2 - lens(radius, chord)), 4);
  });

  it("stay round in mm: two squares at 45° are the square and four tips", () => {
    const turned = (turns: number) => {
      return drawShape({ turns, about: [3, 0], of: { path: box(2, 4, -1, 1) } }, { unit: "mm" }).area;
    };
    expect(turned(4)).toBeCloseTo(4, 6);
    // Each tip is a right isosceles triangle, √2 − 1 high.
    expect(turned(8)).toBeCloseTo(4 + 4 * (Math.SQRT2 - 1) ** 2, 5);
  });

  it("turn lines too", () => {
    const { drawn } = drawShape({ turns: 6, of: { path: "M 0.6 0 H 0.9" } });
    expect(drawn.open).toHaveLength(6);
    expect(drawn.closed).toHaveLength(0);
  });
});
