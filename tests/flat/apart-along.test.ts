import { describe, expect, it } from "vitest";
import { finish } from "../../src/base/pausing.js";
import { apartAlong } from "../../src/flat/apart-along.js";
import type { GridPath } from "../../src/flat/grid.js";
import { ringArea, unite, uniting } from "../../src/flat/polygons.js";

/** A wavy ring of so many corners about (x, 0), 1000 wide or so. */
const ring = (x: number, corners: number, wide = 1): GridPath =>
  Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = 450 + 50 * Math.sin(30 * angle);
    return { x: Math.round(x + wide * radius * Math.cos(angle)), y: Math.round(radius * Math.sin(angle)) };
  });

const many = (places: readonly number[]) => places.map((x) => ring(x, 6000));

/** Rings as text, whichever comes first and wherever each begins. */
function textOf(rings: readonly GridPath[]): string {
  const texts = rings.map((one) => {
    const points = one.map(({ x, y }) => `${x} ${y}`);
    const first = points.indexOf(points.toSorted()[0]);
    return [...points.slice(first), ...points.slice(0, first)].join();
  });
  return texts.sort().join("; ");
}

describe("rings apart along the strip", () => {
  it("are lists of their own, from left to right, where there are many corners", () => {
    const rings = many([4000, 0, 1200, 2000, 5500]);
    expect(apartAlong(rings)).toEqual([[rings[1]], [rings[2], rings[3]], [rings[0]], [rings[4]]]);
    const few = rings.map((one) => one.slice(0, 100));
    expect(apartAlong(few)).toEqual([few]);
  });

  it("are one list where one reaches over all others, or each touches the next", () => {
    const rings = [...many([4000, 0, 1500, 2500]), ring(2000, 100, 8)];
    expect(apartAlong(rings)).toEqual([rings]);
    const square = (x: number): GridPath => [0, 1, 2, 3].map((i) => ({ x: x + (i % 3 > 0 ? 1 : 0), y: i > 1 ? 1 : 0 }));
    const row = Array.from({ length: 6000 }, (_, i) => square(i));
    expect(apartAlong(row)).toEqual([row]);
  });

  it("are united to the same region, ring by ring, as all at once", () => {
    for (const places of [
      [0, 1100, 2200, 3300],
      [3300, 0, 700, 2200, 2201],
    ]) {
      const rings = many(places);
      const parted = finish(uniting(rings));
      expect(apartAlong(rings).length).toBeGreaterThan(1);
      expect(textOf(parted) === textOf(unite(rings))).toBe(true);
      expect(parted.reduce((sum, one) => sum + ringArea(one), 0)).toBeGreaterThan(0);
    }
  });
});
