import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Carrier, intersect } from "../../../src/base/math/intersect.js";

const line = (x: number, y: number, angle: number): Carrier => ({
  kind: "line",
  at: [x, y],
  direction: [Math.cos(angle), Math.sin(angle)],
});
const circle = (x: number, y: number, radius: number): Carrier => ({ kind: "circle", centre: [x, y], radius });

/** How far a point is from a carrier, by its equation. */
function off(carrier: Carrier, [x, y]: readonly [number, number]): number {
  if (carrier.kind === "circle") {
    return Math.abs(Math.hypot(x - carrier.centre[0], y - carrier.centre[1]) - carrier.radius);
  }
  return Math.abs((x - carrier.at[0]) * carrier.direction[1] - (y - carrier.at[1]) * carrier.direction[0]);
}

describe("where lines and circles meet", () => {
  it("is on both, and is found in as many points as there are (closed forms)", () => {
    const numbers = fc.double({ min: -5, max: 5, noNaN: true });
    const carriers = fc.oneof(
      fc.tuple(numbers, numbers, numbers).map(([x, y, a]) => line(x, y, a)),
      fc.tuple(numbers, numbers, fc.double({ min: 0.1, max: 5, noNaN: true })).map(([x, y, r]) => circle(x, y, r)),
    );
    fc.assert(
      fc.property(carriers, carriers, (a, b) => {
        const count = countOf(a, b);
        fc.pre(count !== undefined);
        const points = intersect(a, b);
        expect(points).toHaveLength(count ?? 0);
        for (const point of points) {
          expect(off(a, point)).toBeLessThan(1e-6);
          expect(off(b, point)).toBeLessThan(1e-6);
        }
        if (points.length === 2)
          expect(Math.hypot(points[0][0] - points[1][0], points[0][1] - points[1][1])).toBeGreaterThan(1e-3);
      }),
      { numRuns: 500 },
    );
  });

  it("is one point twice where they touch", () => {
    expect(intersect(line(0, 1, 0), circle(0, 0, 1))).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect(intersect(circle(0, 0, 1), circle(3, 0, 2))).toEqual([
      [1, 0],
      [1, 0],
    ]);
    expect(intersect(circle(0, 0, 3), circle(1, 0, 2))).toEqual([
      [3, 0],
      [3, 0],
    ]);
  });

  it("is nowhere for parallel lines, one circle and itself, and circles about one middle", () => {
    expect(intersect(line(0, 0, 1), line(1, 0, 1))).toEqual([]);
    expect(intersect(line(0, 0, 1), line(0, 0, 1 + Math.PI))).toEqual([]);
    expect(intersect(circle(1, 2, 3), circle(1, 2, 3))).toEqual([]);
    expect(intersect(circle(1, 2, 3), circle(1, 2, 4))).toEqual([]);
    expect(intersect(circle(0, 0, 5), circle(1, 0, 1))).toEqual([]);
  });
});

/** How many points two carriers share; undefined within a thousandth of touching or of being parallel. */
function countOf(a: Carrier, b: Carrier): number | undefined {
  const near = (value: number) => Math.abs(value) < 1e-3;
  if (a.kind === "line" && b.kind === "line") {
    const sine = a.direction[0] * b.direction[1] - a.direction[1] * b.direction[0];
    return near(sine) ? undefined : 1;
  }
  if (a.kind === "circle" && b.kind === "circle") {
    const d = Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]);
    const [sum, difference] = [a.radius + b.radius, Math.abs(a.radius - b.radius)];
    if (near(d) || near(d - sum) || near(d - difference)) return undefined;
    return d < sum && d > difference ? 2 : 0;
  }
  const [one, round] = a.kind === "line" ? [a, b] : [b, a];
  if (round.kind !== "circle") return undefined;
  const distance = off(one, round.centre);
  if (near(distance - round.radius)) return undefined;
  return distance < round.radius ? 2 : 0;
}
