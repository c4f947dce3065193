import { describe, expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { intersect, offset, ringArea, subtract, unite } from "../../src/flat/polygons.js";
import { sweepAlong } from "../../src/flat/sweep-along.js";

const STEP = 1000;

/** A leaf without any symmetry, about so many steps along. */
const leaf = (i: number): GridPath =>
  [
    [0, 0],
    [500, -130],
    [811, 77],
    [640, 390],
    [210, 333],
  ].map(([x, y]) => ({ x: x + i * STEP, y: y + (i % 3) * 170 }));

const row = (count: number) => Array.from({ length: count }, (_, i) => leaf(i));
const area = (rings: readonly GridPath[]) => rings.reduce((sum, ring) => sum + ringArea(ring), 0);

/** The rings in one order, each from its lowest corner on, so that two regions can be compared. */
const inOrder = (rings: readonly GridPath[]) =>
  rings
    .map((ring) => {
      const texts = ring.map(({ x, y }) => `${x},${y}`);
      const first = texts.indexOf([...texts].sort()[0]);
      return [...texts.slice(first), ...texts.slice(0, first)].join(" ");
    })
    .sort();

describe("rings in a long row", () => {
  it("are handed over turned a quarter, and come back as they were", () => {
    const seen: GridPath[] = [];
    const same = sweepAlong([row(600)], ([paths]) => {
      seen.push(...paths);
      return paths;
    });
    expect(same).toEqual(row(600));
    expect(seen[5]).toEqual(leaf(5).map(({ x, y }) => ({ x: y, y: 0 - x })));
    expect(seen.flat().some(({ y }) => Object.is(y, -0))).toBe(false);
    expect(area(seen)).toBe(area(row(600)));
  });

  it("stay as they lie where they are few, or high", () => {
    const lying = (paths: readonly GridPath[]) => {
      let as: readonly GridPath[] = [];
      sweepAlong([paths], ([own]) => {
        as = own;
        return own;
      });
      return as === paths;
    };
    expect(lying(row(100))).toBe(true);
    expect(lying(row(600).map((ring) => ring.map(({ x, y }) => ({ x: y, y: x }))))).toBe(true);
    expect(lying(row(600))).toBe(false);
  });

  it("come to what each few of them come to", () => {
    const [many, few] = [row(600), row(50)];
    const tail = (rings: readonly GridPath[]) => rings.filter((ring) => ring.every(({ x }) => x < 45 * STEP));
    const cut = (rings: readonly GridPath[]) =>
      rings.map((ring) => ring.map(({ x, y }) => ({ x: x + 300, y: y + 90 })));
    const works = [
      (rings: readonly GridPath[]) => unite([...rings, ...cut(rings)]),
      (rings: readonly GridPath[]) => subtract(rings, cut(rings)),
      (rings: readonly GridPath[]) => intersect(rings, cut(rings)),
      (rings: readonly GridPath[]) => offset(rings, 40, "miter", 1),
      (rings: readonly GridPath[]) => offset(rings, -60, "miter", 1),
    ];
    for (const work of works) {
      const [long, short] = [tail(work(many)), tail(work(few))];
      expect(long.length).toBe(short.length);
      // Where lines cross, points are rounded to the grid: half a step up lies elsewhere once turned.
      expect(Math.abs(area(long) / area(short) - 1)).toBeLessThan(1e-4);
    }
    expect(inOrder(tail(offset(many, 40, "miter", 1)))).toEqual(inOrder(tail(offset(few, 40, "miter", 1))));
  });
});
