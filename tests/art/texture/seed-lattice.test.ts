import { describe, expect, it } from "vitest";
import { type LatticeInput, ROW, type SeedLattice, seedLattice } from "../../../src/art/texture/seed-lattice.js";
import { type FriezeName, friezeGroup, friezeGroups } from "../../../src/base/frieze/symmetry.js";

const input = (symmetry: FriezeName, own: Partial<LatticeInput> = {}): LatticeInput => ({
  width: 9,
  height: 7,
  along: 0.8,
  across: 0.8,
  irregular: 1,
  seed: 5,
  operations: friezeGroup(symmetry).operations,
  ...own,
});

/** The points of one period, mm, with their chance. */
function pointsOf({ columns, pitch, moved, chance }: SeedLattice): (readonly [number, number, number])[] {
  return moved.map(([x, y], cell) => {
    const [column, row] = [cell % columns, Math.floor(cell / columns)];
    return [(column + (row % 2) / 2 + x) * pitch[0], (row + y) * pitch[1], chance[cell]];
  });
}

/** The shorter way between two values that come again after a period. */
function apart(a: number, b: number, period: number): number {
  const way = Math.abs(a - b) % period;
  return Math.min(way, period - way);
}

/** By how much each point misses the image of some point, at most, mm; every pair is looked at. */
function misses(symmetry: FriezeName, asked: FriezeName = symmetry): number {
  const { width, height } = input(symmetry);
  const points = pointsOf(seedLattice(input(symmetry)));
  let worst = 0;
  for (const { flipX, flipY, shift } of friezeGroup(asked).operations) {
    for (const [x, y, chance] of points) {
      const [u, v] = [(flipX ? -x : x) + shift * width, flipY ? -y : y];
      const nearest = points.reduce(
        (least, [a, b, other]) =>
          chance === other ? Math.min(least, Math.hypot(apart(a, u, width), apart(b, v, height))) : least,
        Number.POSITIVE_INFINITY,
      );
      worst = Math.max(worst, nearest);
    }
  }
  return worst;
}

describe("the points of a texture", () => {
  it.each(friezeGroups.map(({ name }) => name))("are their own images in %s", (name) => {
    expect(misses(name)).toBeLessThan(1e-12);
  });

  it("are not symmetric where nothing asks for it", () => {
    for (const name of ["p11g", "p1m1", "p2", "p11m"] as const) expect(misses("p1", name)).toBeGreaterThan(0.1);
    expect(misses("p2", "p1m1")).toBeGreaterThan(0.1);
    expect(misses("p2mg", "p2mm")).toBeGreaterThan(0.1);
  });

  it("keep apart on mirrors as elsewhere: none nearer to another than cells moved at random allow", () => {
    for (const { name } of friezeGroups) {
      const { width, height } = input(name);
      const lattice = seedLattice(input(name));
      const points = pointsOf(lattice);
      const [along, across] = lattice.pitch;
      // Neighbours in a row come within 1 − 2 · 0.4 of a pitch, and of rows likewise.
      const least = 0.2 * Math.min(along, across);
      const ways = points.flatMap(([x, y], i) =>
        points.slice(0, i).map(([a, b]) => Math.hypot(apart(a, x, width), apart(b, y, height))),
      );
      expect(Math.min(...ways)).toBeGreaterThanOrEqual(least);
    }
  });

  it("stand evenly where that is asked, set off by half from row to row", () => {
    const lattice = seedLattice(input("p1", { irregular: 0, width: 8, height: 8 * ROW, along: 1, across: 1 }));
    expect([lattice.columns, lattice.rows]).toEqual([8, 8]);
    const points = pointsOf(lattice);
    for (const [x, y] of points) {
      const ways = points.map(([a, b]) => Math.hypot(apart(a, x, 8), apart(b, y, 8 * ROW))).sort((a, b) => a - b);
      // Each has six neighbours at one pitch, and none nearer.
      expect(ways.slice(1, 7).every((way) => Math.abs(way - 1) < 1e-9)).toBe(true);
      expect(ways[7]).toBeGreaterThan(1.5);
    }
  });

  it("are an even number along where half a tile is an operation, and as near to what is wished for as that goes", () => {
    const columns = (symmetry: FriezeName, width: number) => seedLattice(input(symmetry, { width })).columns;
    expect([columns("p1", 4), columns("p11g", 4), columns("p1", 3.9)]).toEqual([5, 6, 5]);
    const { rows, pitch } = seedLattice(input("p1"));
    expect(rows % 2).toBe(0);
    expect(Math.abs(pitch[1] / (ROW * 0.8) - 1)).toBeLessThan(0.15);
  });

  it("are others with another seed, in place and in chance", () => {
    const [a, b] = [seedLattice(input("p1")), seedLattice(input("p1", { seed: 6 }))];
    expect(a.moved.filter(([x], i) => Math.abs(x - b.moved[i][0]) < 1e-3).length).toBeLessThan(4);
    expect(seedLattice(input("p1"))).toEqual(a);
  });
});
