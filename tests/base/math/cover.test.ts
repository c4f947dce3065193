// Covers: src/base/math/side-spans.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverOf, type Side } from "../../../src/base/math/cover.js";
import type { Point2 } from "../../../src/base/math/point.js";

const ring = (...points: Point2[]): Side[] => points.map((point, i): Side => [point, points[(i + 1) % points.length]]);
const square = ring([0, 0], [1, 0], [1, 1], [0, 1]);
const reversed = ([a, b]: Side): Side => [b, a];

describe("a side over other sides", () => {
  it.each<[string, Side, boolean]>([
    [
      "one of them",
      [
        [0, 0],
        [1, 0],
      ],
      true,
    ],
    [
      "a part of one",
      [
        [0.2, 0],
        [0.7, 0],
      ],
      true,
    ],
    [
      "a point on one",
      [
        [0.5, 0],
        [0.5, 0],
      ],
      true,
    ],
    [
      "a point off them",
      [
        [0.5, 0.5],
        [0.5, 0.5],
      ],
      false,
    ],
    [
      "beside one, within reach",
      [
        [0, 0.009],
        [1, 0.009],
      ],
      true,
    ],
    [
      "beside one, out of reach",
      [
        [0, 0.011],
        [1, 0.011],
      ],
      false,
    ],
    [
      "past a corner",
      [
        [0.5, 0],
        [1.02, 0],
      ],
      false,
    ],
    [
      "between two corners",
      [
        [0, 0],
        [1, 1],
      ],
      false,
    ],
    [
      "from side to side",
      [
        [0, 0.5],
        [1, 0.5],
      ],
      false,
    ],
  ])("%s", (_, side, covered) => {
    expect(coverOf(square, { reach: 0.01 })(side)).toBe(covered);
    expect(coverOf(square, { reach: 0.01 })(reversed(side))).toBe(covered);
  });

  it("is covered piece by piece, but not over a gap", () => {
    const pieces: Side[] = [
      [
        [0, 0],
        [0.4, 0],
      ],
      [
        [1, 0],
        [0.4, 0],
      ],
    ];
    expect(
      coverOf(pieces, { reach: 1e-6 })([
        [0, 0],
        [1, 0],
      ]),
    ).toBe(true);
    const gap: Side[] = [
      pieces[0],
      [
        [0.41, 0],
        [1, 0],
      ],
    ];
    expect(
      coverOf(gap, { reach: 1e-6 })([
        [0, 0],
        [1, 0],
      ]),
    ).toBe(false);
  });

  it("asks which way sides run only where told to", () => {
    expect(
      coverOf(square, { reach: 0.01, directed: true })([
        [1, 0],
        [0, 0],
      ]),
    ).toBe(false);
    expect(
      coverOf(square, { reach: 0.01, directed: true })([
        [0, 0],
        [1, 0],
      ]),
    ).toBe(true);
  });

  it("comes again after a period, to either side", () => {
    const covered = coverOf(
      [
        [
          [0.8, 0],
          [1.3, 0],
        ],
      ],
      { reach: 1e-6, period: 1 },
    );
    for (const shift of [-3, 0, 5])
      expect(
        covered([
          [0.8 + shift, 0],
          [1.3 + shift, 0],
        ]),
      ).toBe(true);
    expect(
      covered([
        [0.2, 0],
        [0.9, 0],
      ]),
    ).toBe(false);
    expect(
      coverOf(
        [
          [
            [0, 0],
            [0.5, 0],
          ],
          [
            [0.5, 0],
            [1, 0],
          ],
        ],
        { reach: 1e-6, period: 1 },
      )([
        [-2.25, 0],
        [4.5, 0],
      ]),
    ).toBe(true);
  });

  it("says nothing lies on no sides", () => {
    expect(
      coverOf([], { reach: 1 })([
        [0, 0],
        [1, 0],
      ]),
    ).toBe(false);
  });

  it("agrees with points along the side, each asked for its distance", () => {
    const at = fc.integer({ min: 0, max: 6 }).map((n) => n / 2);
    const side = fc.tuple(fc.tuple(at, at), fc.tuple(at, at)) as fc.Arbitrary<Side>;
    const near = (x: number, y: number, [[ax, ay], [bx, by]]: Side) => {
      const [dx, dy] = [bx - ax, by - ay];
      const square = dx * dx + dy * dy;
      const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
      return Math.hypot(x - ax - t * dx, y - ay - t * dy);
    };
    fc.assert(
      fc.property(fc.array(side, { minLength: 1, maxLength: 12 }), side, (sides, asked) => {
        const far = (reach: number) =>
          Array.from({ length: 201 }, (_, i) => i / 200).some((t) => {
            const [x, y] = [0, 1].map((k) => asked[0][k] + t * (asked[1][k] - asked[0][k]));
            return sides.every((one) => near(x, y, one) > reach);
          });
        // Gaps narrower than the points' spacing are left out: those within a reach a tenth larger.
        const covered = coverOf(sides, { reach: 0.1 })(asked);
        if (far(0.101)) expect(covered).toBe(false);
        else if (!far(0.09)) expect(coverOf(sides, { reach: 0.13 })(asked)).toBe(true);
      }),
      { numRuns: 500, seed: 20 },
    );
  });
});
