// Covers: src/band/surface/narrowed-line.ts
/** Beads on a band that tapers, and its surface: `band/surface/tapered.ts` and `narrowed-line.ts`. */
import { describe, expect, it } from "vitest";
import { TURN } from "../../src/base/units.js";
import type { Bead } from "../../src/beads/bead.js";
import { bodiesOf } from "../support/stages.js";

const TOLERANCE = 0.01;
const DIAMETER = 0.3;
const HEIGHT = 0.35;

const made = bodiesOf({
  annulet: 1,
  size: { diameter: 17.5 },
  tolerance: TOLERANCE,
  profile: {
    width: 8,
    thickness: 2.2,
    outside: { form: "channel", rail: 0.9, depth: 0.6 },
    taper: { width: 4, thickness: 1.6 },
  },
  pattern: {
    fit: { hold: "band", repeats: 8 },
    symmetry: "p2mm",
    regions: [
      {
        name: "shell",
        path: "M 0.1 0 C 0.2 -0.35 0.3 -0.35 0.4 0 C 0.3 0.35 0.2 0.35 0.1 0 Z",
        ribbon: { width: 0.5, side: "inside" },
        height: HEIGHT,
        beads: { diameter: DIAMETER, on: "centre", embed: 0.3 },
      },
    ],
  },
  beads: [
    { along: "rail", diameter: 0.4, embed: 0.5 },
    { along: "seat-edge", diameter: 0.2, inset: 0.3 },
  ],
});

const { wrap, parts, profile } = made;

function beadsOf(run: string): readonly Bead[] {
  const at = parts.runs.findIndex((one) => one.run === run);
  const before = parts.runs.slice(0, at).reduce((sum, { count }) => sum + count, 0);
  return parts.spheres.slice(before, before + parts.runs[at].count);
}

/** Distance of a point from the surface h = 0, by steps towards the nearest place: no formula of the map's own. */
function distanceFromSeat(point: readonly [number, number, number]): number {
  let [u, v] = wrap.inverse(...point);
  const from = ([a, b]: readonly [number, number]) => {
    const on = wrap.forward(a, b, 0);
    return Math.hypot(on[0] - point[0], on[1] - point[1], on[2] - point[2]);
  };
  for (let step = 0.02; step > 1e-7; step /= 2) {
    for (let i = 0; i < 8; i++) {
      const tries = [-1, 0, 1].flatMap((a) => [-1, 0, 1].map((b) => [u + a * step, v + b * step] as const));
      [u, v] = tries.reduce((best, one) => (from(one) < from(best) ? one : best), [u, v] as const);
    }
  }
  return from([u, v]);
}

describe("beads on a band that tapers", () => {
  it("stand as high over the true surface as the relief and their embedding say, to a micrometre", () => {
    const beads = beadsOf("shell");
    expect(beads.length).toBeGreaterThan(100);
    for (const { centre } of beads) {
      expect(Math.abs(distanceFromSeat(centre) - (HEIGHT + DIAMETER * (0.5 - 0.3)))).toBeLessThan(1e-3);
    }
  });

  it("stand in the middle of the rails' tops, evenly in space", () => {
    const beads = beadsOf("rail");
    const low = beads.filter(({ centre }) => centre[2] < 0);
    expect(low.length * 2).toBe(beads.length);
    for (const { centre } of beads) {
      const { width, thickness } = profile.sizesAt(Math.atan2(centre[1], centre[0]));
      expect(Math.abs(Math.hypot(centre[0], centre[1]) - 8.75 - thickness)).toBeLessThan(1e-4);
      // The outer corner and the inner one are rounded alike.
      expect(Math.abs(Math.abs(centre[2]) - (width / 2 - 0.45))).toBeLessThan(1e-4);
    }
    const chords = low.map(({ centre: [x, y, z] }, i) => {
      const [a, b, c] = low[(i + 1) % low.length].centre;
      return Math.hypot(a - x, b - y, c - z);
    });
    expect(Math.max(...chords) - Math.min(...chords)).toBeLessThan(1e-3);
  });

  it("keep their way from the seat's edge", () => {
    for (const { centre } of beadsOf("seat-edge")) {
      const line = wrap.lineAt(Math.atan2(centre[1], centre[0]));
      const [w] = line.point(line.inverse(centre[2], Math.hypot(centre[0], centre[1]))[0], 0);
      const [edge] = line.point(line.reach, 0);
      expect(edge - Math.abs(w)).toBeCloseTo(0.3, 5);
    }
  });
});

describe("the surface of a band that tapers", () => {
  const places = Array.from({ length: 400 }, (_, i) => {
    const share = (by: number) => ((i + 1) * by) % 1;
    return [
      share(0.6180339) * wrap.round,
      (share(0.7548777) - 0.5) * wrap.seatLength,
      share(0.5698403) * 0.8 - 0.2,
    ] as const;
  });

  it("comes back from space to the flat point", () => {
    for (const [u, v, h] of places) {
      const [bu, bv, bh] = wrap.inverse(...wrap.forward(u, v, h));
      expect(Math.abs(((bu - u + wrap.round * 1.5) % wrap.round) - wrap.round / 2)).toBeLessThan(1e-8);
      expect(Math.abs(bv - v)).toBeLessThan(1e-8);
      expect(Math.abs(bh - h)).toBeLessThan(1e-8);
    }
  });

  it("has the normal and the stretches of its own slopes", () => {
    const step = 1e-5;
    for (const [u, v] of places) {
      const slope = (du: number, dv: number) => {
        const [a, b] = [wrap.forward(u - du, v - dv, 0), wrap.forward(u + du, v + dv, 0)];
        return [0, 1, 2].map((k) => (b[k] - a[k]) / (2 * step));
      };
      const [along, across] = [slope(step, 0), slope(0, step)];
      const normal = wrap.normal(u, v);
      for (const way of [along, across]) {
        expect(Math.abs(way.reduce((sum, value, k) => sum + value * normal[k], 0))).toBeLessThan(1e-5);
      }
      expect(Math.hypot(...normal)).toBeCloseTo(1, 12);
      const stretch = wrap.stretchAt(u, v, 0);
      expect(Math.hypot(...along)).toBeCloseTo(stretch.along, 5);
      expect(Math.hypot(...across)).toBeCloseTo(stretch.across, 5);
    }
  });

  it("is within a micrometre as high along its own normal as along that of its section", () => {
    for (const [u, v] of places) {
      const [nw, nr] = wrap.lineAt(wrap.angleAt(u)).normal(v);
      const angle = wrap.angleAt(u);
      const [x, y, z] = wrap.normal(u, v);
      const cosine = x * nr * Math.cos(angle) + y * nr * Math.sin(angle) + z * nw;
      expect(0.5 * (1 - cosine)).toBeLessThan(1e-3);
      expect(Math.acos(Math.min(1, cosine))).toBeLessThan((3 * TURN) / 360);
    }
  });
});
