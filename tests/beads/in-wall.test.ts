import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { inWall } from "../../src/beads/in-wall.js";

/** A floor at r = 10 between walls at w = ±2, 1 mm high. */
const channel: Point2[] = [
  [3, 9],
  [3, 11],
  [2, 11],
  [2, 10],
  [-2, 10],
  [-2, 11],
  [-3, 11],
  [-3, 9],
];
const bead = (w: number, rise = 0) => ({ foot: [w, 10], outward: [0, 1], rise, radius: 0.4 }) as const;

describe("a bead beside a wall", () => {
  it("is in it by what the wall stands into it", () => {
    expect(inWall(channel, bead(0))).toBe(0);
    expect(inWall(channel, bead(1.7, 0.2))).toBeCloseTo(0.25, 2);
    expect(inWall(channel, bead(-1.9, 0.2))).toBeCloseTo(0.75, 2);
    expect(inWall(channel, bead(1.55, 0.2))).toBe(0);
  });

  it("is not in a seat that is hollow or domed itself", () => {
    const round = (radius: number, from: number) =>
      Array.from({ length: 100 }, (_, i): Point2 => {
        const angle = from + (Math.PI * i) / 99;
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      });
    const hollow = { foot: [0, -2], outward: [0, 1], rise: 0, radius: 0.4 } as const;
    expect(inWall(round(2, Math.PI), hollow)).toBe(0);
    expect(inWall(round(2, 0), { ...hollow, foot: [0, 2] })).toBe(0);
  });
});
