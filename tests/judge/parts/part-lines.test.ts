// Covers: src/judge/parts/body-lines.ts
import { openRing } from "annulet";
import { describe, expect, it } from "vitest";

const SEAT = 9.9;

const ring = openRing({
  annulet: 1,
  name: "lines",
  size: { diameter: 17 },
  tolerance: 0.02,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.8, depth: 0.6 } },
  pattern: {
    symmetry: "p1",
    fit: { repeats: 10, hold: "band" },
    regions: [
      { name: "along", path: "M 0 0.2 H 1 V 0.3 H 0 Z", height: 0.3 },
      { name: "dot", path: "M -0.1 -0.3 H 0.1 V -0.1 H -0.1 Z", height: 0.3, beads: { diameter: 0.3, on: "border" } },
      { name: "pit", path: "M 0.2 0.22 H 0.4 V 0.28 H 0.2 Z", mode: "sunk", depth: 0.1 },
    ],
  },
});

const linesOf = async (path: string) => {
  const numbers = await ring.partLines({ path }, { detail: "draft" });
  return Array.from({ length: numbers.length / 6 }, (_, i) => {
    const [ax, ay, az, bx, by, bz] = numbers.subarray(6 * i, 6 * i + 6);
    return {
      length: Math.hypot(bx - ax, by - ay, bz - az),
      radius: Math.hypot((ax + bx) / 2, (ay + by) / 2),
      z: (az + bz) / 2,
    };
  });
};
const sum = (lines: readonly { readonly length: number }[]) => lines.reduce((all, { length }) => all + length, 0);

describe("the lines of a part", () => {
  it("of a band all the way round are two circles at its height, without the borders of tiles", async () => {
    const own = await linesOf("pattern.regions[0]");
    expect(await linesOf("pattern.regions[0].height")).toEqual(own);
    expect(sum(own) / (2 * 2 * Math.PI * (SEAT + 0.32))).toBeCloseTo(1, 3);
    for (const { radius, z } of own) {
      expect(radius).toBeCloseTo(SEAT + 0.32, 2);
      expect(Math.min(Math.abs(z - 0.88), Math.abs(z - 1.32))).toBeLessThan(1e-3);
    }
  });

  it("of a region that lies over a tile's border are its outline in each copy, whole", async () => {
    const tile = (2 * Math.PI * (SEAT + 0.32)) / 10;
    expect(sum(await linesOf("pattern.regions[1]")) / (10 * 2 * (0.2 * tile + 0.2 * 4.4))).toBeCloseTo(1, 2);
  });

  it("of beads go round each of them, in place of the region's", async () => {
    const beads = await linesOf("pattern.regions[1].beads");
    const [{ count = 0 } = {}] = await ring.beads();
    expect(count).toBeGreaterThan(70);
    expect(sum(beads) / (count * Math.PI * (0.3 + 0.04))).toBeCloseTo(1, 1);
  });

  it("of what is cut lie on top of what it is cut into", async () => {
    for (const { radius } of await linesOf("pattern.regions[2]")) expect(radius).toBeCloseTo(SEAT + 0.32, 2);
  });

  it("of the band are the circles between its parts", async () => {
    expect(sum(await linesOf("profile.outside.rail")) / (2 * Math.PI * 2 * (SEAT + 10.5))).toBeCloseTo(1, 1);
    expect(await linesOf("profile.outside.edge")).not.toEqual([]);
    expect(await linesOf("material")).toEqual([]);
  });
});
