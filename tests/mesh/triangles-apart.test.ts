import { describe, expect, it } from "vitest";
import { surelyApart } from "../../src/mesh/triangles-apart.js";
import { meshOf } from "../support/meshes.js";

/** Numbers from 0 to below 1, the same in each run (Park and Miller's generator). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const one = (...points: readonly (readonly [number, number, number])[]) => meshOf(points, [[0, 1, 2]]);
const flat = one([0, 0, 0], [4, 0, 0], [0, 4, 0]);

describe("two triangles", () => {
  it.each([
    ["one above the other", one([1, 1, 0.5], [2, 1, 0.5], [1, 2, 0.9]), 0.5],
    ["one beside the other, in its plane", one([2.5, 2.5, 0], [5, 2.5, 0], [2.5, 5, 0]), 0.7],
    ["corner to corner, along a way that is no side's", one([-0.3, -0.4, 0], [-3, -4, 1], [-3, -4, -1]), 0.49],
    ["side across side, askew", one([2.1, 2.1, -1], [2.1, 2.1, 1], [3, 3, 0]), 0.14],
  ])("lie apart, %s", (_, other, gap) => {
    expect(surelyApart(flat, 0, other, 0, gap)).toBe(true);
    expect(surelyApart(other, 0, flat, 0, gap)).toBe(true);
    expect(surelyApart(flat, 0, other, 0, gap * 1.2)).toBe(false);
  });

  it("do not where they cross, touch, or are none", () => {
    expect(surelyApart(flat, 0, one([1, 1, -1], [1, 1, 1], [2, 1, 1]), 0, 1e-9)).toBe(false);
    expect(surelyApart(flat, 0, flat, 0, 1e-9)).toBe(false);
    expect(surelyApart(flat, 0, one([1, 1, 0], [1, 1, 0], [1, 1, 0]), 0, 1e-9)).toBe(false);
  });

  it("are never said to lie farther apart than any of their points do", () => {
    const random = randomFrom(7);
    const point = () => [4 * random(), 4 * random(), 4 * random()] as const;
    let apart = 0;
    for (let i = 0; i < 2000; i++) {
      const [p, q] = [
        [point(), point(), point()],
        [point(), point(), point()],
      ];
      const gap = 0.2 + random();
      if (!surelyApart(one(...p), 0, one(...q), 0, gap)) continue;
      apart++;
      // Points all over both, their corners among them.
      for (let k = 0; k < 60; k++) {
        const [a, b] = [p, q].map((corners) => {
          const [s, t] =
            k < 9 ? [Math.floor(k / 3) === 1 ? 1 : 0, Math.floor(k / 3) === 2 ? 1 : 0] : [random(), random()];
          const [u, v] = s + t > 1 ? [1 - s, 1 - t] : [s, t];
          return [0, 1, 2].map((c) => corners[0][c] * (1 - u - v) + corners[1][c] * u + corners[2][c] * v);
        });
        expect(Math.hypot(...a.map((x, c) => x - b[c]))).toBeGreaterThanOrEqual(gap - 1e-9);
      }
    }
    expect(apart).toBeGreaterThan(200);
  });
});
