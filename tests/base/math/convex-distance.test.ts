// Covers: src/base/math/convex-depth.ts
/**
 * Distances and depths of balls, boxes and discs against what they are by hand.
 */
import { describe, expect, it } from "vitest";
import { convexDepth } from "../../../src/base/math/convex-depth.js";
import { type Convex, convexDistance } from "../../../src/base/math/convex-distance.js";
import type { Point3 } from "../../../src/base/math/point.js";
import { seeded } from "../../../src/base/math/seeded.js";

const ball = (middle: Point3, radius: number): Convex => ({
  middle,
  farthest: (d) => {
    const length = Math.hypot(...d);
    return [0, 1, 2].map((k) => middle[k] + (radius * d[k]) / length) as unknown as Point3;
  },
});

const box = (middle: Point3, half: Point3): Convex => ({
  middle,
  farthest: (d) => [0, 1, 2].map((k) => middle[k] + (d[k] < 0 ? -half[k] : half[k])) as unknown as Point3,
});

/** A flat disc about z. */
const disc = (middle: Point3, radius: number): Convex => ({
  middle,
  farthest: ([x, y]) => {
    const length = Math.hypot(x, y) || 1;
    return [middle[0] + (radius * x) / length, middle[1] + (radius * y) / length, middle[2]];
  },
});

describe("the distance of convex bodies", () => {
  it("is that of balls' middles less their radii", () => {
    for (let i = 0; i < 40; i++) {
      const [x, y, z, r] = [0, 1, 2, 3].map((channel) => seeded(7, i, channel));
      const at: Point3 = [3 + x, y - 0.5, 2 * z];
      const { distance, from, to } = convexDistance(ball([0, 0, 0], 1), ball(at, 0.5 + r));
      expect(distance).toBeCloseTo(Math.hypot(...at) - 1.5 - r, 8);
      expect(Math.hypot(...from)).toBeCloseTo(1, 8);
      expect(Math.hypot(...to.map((value, k) => value - from[k]))).toBeCloseTo(distance, 8);
    }
  });

  it("is that of boxes' corners, sides and faces", () => {
    const one = box([0, 0, 0], [1, 2, 3]);
    expect(convexDistance(one, box([4, 0, 0], [1, 1, 1])).distance).toBeCloseTo(2, 12);
    expect(convexDistance(one, box([5, 6, 0], [1, 1, 1])).distance).toBeCloseTo(Math.hypot(3, 3), 12);
    expect(convexDistance(one, box([5, 6, 8], [1, 1, 1])).distance).toBeCloseTo(Math.hypot(3, 3, 4), 12);
  });

  it("is that of discs in one plane, and of one above the other", () => {
    expect(convexDistance(disc([0, 0, 0], 1), disc([3, 4, 0], 1.5)).distance).toBeCloseTo(2.5, 10);
    expect(convexDistance(disc([0, 0, 0], 1), disc([0.3, 0, 0.7], 1)).distance).toBeCloseTo(0.7, 10);
  });

  it("is nothing where they overlap", () => {
    expect(convexDistance(ball([0, 0, 0], 1), ball([1, 0, 0], 1)).distance).toBe(0);
    expect(convexDistance(box([0, 0, 0], [1, 1, 1]), box([0.5, 0.2, 0.1], [1, 1, 1])).distance).toBe(0);
  });
});

describe("the depth of convex bodies in each other", () => {
  it("is how far balls' radii are more than their middles' distance", () => {
    expect(convexDepth(ball([0, 0, 0], 1), ball([1.2, 0.5, 0.3], 0.7))).toBeCloseTo(1.7 - Math.hypot(1.2, 0.5, 0.3), 5);
  });

  it("is the least way out of a box", () => {
    expect(convexDepth(box([0, 0, 0], [1, 2, 3]), box([1.7, 0.1, 0.2], [1, 1, 1]))).toBeCloseTo(0.3, 6);
    // At one place: out by the whole of the narrowest side.
    expect(convexDepth(box([0, 0, 0], [1, 2, 3]), box([0, 0, 0], [1, 2, 3]))).toBeCloseTo(2, 6);
  });

  it("is nothing where they touch or lie apart", () => {
    expect(convexDepth(box([0, 0, 0], [1, 1, 1]), box([2, 0, 0], [1, 1, 1]))).toBeCloseTo(0, 8);
    expect(convexDepth(ball([0, 0, 0], 1), ball([3, 0, 0], 1))).toBe(0);
  });
});
