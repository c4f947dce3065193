import fc from "fast-check";
import { expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { nearPairs } from "../../src/flat/tangled.js";
import { SEED } from "./strips.js";

const rings = fc.array(
  fc.array(fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 40 }) }), {
    minLength: 3,
    maxLength: 8,
  }),
  { maxLength: 5 },
);

/** Pairs of edges whose boxes share more than a border, each pair compared. */
function byComparing(all: readonly GridPath[]): number {
  const edges = all.flatMap((ring) => ring.map((a, i) => [a, ring[(i + 1) % ring.length]] as const));
  const span = (edge: (typeof edges)[number], axis: "x" | "y") => [
    Math.min(edge[0][axis], edge[1][axis]),
    Math.max(edge[0][axis], edge[1][axis]),
  ];
  let pairs = 0;
  edges.forEach((one, i) => {
    for (const other of edges.slice(i + 1)) {
      const [[a, b], [c, d]] = [span(one, "x"), span(other, "x")];
      const [[e, f], [g, h]] = [span(one, "y"), span(other, "y")];
      // A level or upright edge has a box without width, which others may reach over.
      if (Math.max(a, c) < Math.min(b, d) && Math.max(e, g) < Math.min(f, h)) pairs++;
    }
  });
  return pairs;
}

it("finds all pairs that comparing each with each finds, but for edges whose boxes have no width", () => {
  const slanted = rings.filter((all) =>
    all.every((ring) =>
      ring.every((a, i) => a.x !== ring[(i + 1) % ring.length].x && a.y !== ring[(i + 1) % ring.length].y),
    ),
  );
  fc.assert(
    fc.property(slanted, (all) => {
      expect(nearPairs(all, 1e6)).toBe(byComparing(all));
    }),
    { seed: SEED },
  );
});

it("sees an upright edge that crosses a level one", () => {
  const cross = [
    [
      { x: 0, y: 5 },
      { x: 10, y: 5 },
      { x: 5, y: 6 },
    ],
    [
      { x: 5, y: 0 },
      { x: 5, y: 10 },
      { x: 6, y: 5 },
    ],
  ];
  expect(nearPairs(cross, 100)).toBeGreaterThan(0);
});

it("stops as soon as there are more than asked for", () => {
  const comb = Array.from({ length: 200 }, (_, i) => [
    { x: i, y: 0 },
    { x: 1000 + i, y: 999 },
    { x: i, y: 1000 },
  ]);
  const all = nearPairs(comb, 1e9);
  expect(all).toBeLessThan(1e9);
  expect(nearPairs(comb, all)).toBe(all);
  expect(nearPairs(comb, all - 1)).toBe(Number.POSITIVE_INFINITY);
  expect(nearPairs(comb, 1)).toBe(Number.POSITIVE_INFINITY);
});
