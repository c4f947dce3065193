// Covers: src/beads/bead-lines.ts, src/pattern/complete-area.ts, src/pattern/raise-regions.ts

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Fit } from "../../src/band/fit/fit.js";
import { fitBand } from "../../src/band/fit/fit-band.js";
import { buildProfile, type Profile } from "../../src/band/profile/profile.js";
import type { Point3 } from "../../src/base/math/point.js";
import { finish } from "../../src/base/pausing.js";
import { beadRunSchema } from "../../src/design/pattern/bead-run.js";
import { patternSchema } from "../../src/design/pattern/pattern.js";
import { profileSchema } from "../../src/design/profile/profile.js";
import type { Pattern } from "../../src/pattern/laid-out.js";
import { completePattern, noPattern } from "../../src/pattern/pattern.js";
import type { ReliefPolygon } from "../../src/relief/flat-body.js";
import { circle, collector, deepFreeze, failureOf } from "../flat/strips.js";

const BORE = 55 / (2 * Math.PI);
const TOLERANCE = 0.01;
const CHANNEL = { form: "channel", rail: 0.9, depth: 0.75, edge: 0.15 };

interface Made {
  readonly pattern: Pattern;
  readonly fit: Fit;
  readonly profile: Profile;
  readonly codes: readonly string[];
}

function make(art: unknown, beads: readonly unknown[] = [], outside: unknown = CHANNEL): Made {
  const spec = deepFreeze(patternSchema.parse(art));
  const runs = deepFreeze(beads.map((run) => beadRunSchema.parse(run)));
  const band = profileSchema.parse({ width: 8.6, thickness: 2.1, bore: { form: "flat", edge: 0.2 }, outside });
  const { codes, warn } = collector();
  const fit = fitBand(spec, { profile: band, boreRadius: BORE, tolerance: TOLERANCE });
  if (fit === undefined) throw new Error("no fit");
  const profile = buildProfile({ ...band, width: fit.bandWidth }, BORE, TOLERANCE);
  const pattern = finish(completePattern(spec, runs, deepFreeze(fit), { profile, tolerance: TOLERANCE, warn }));
  return { pattern, fit, profile, codes };
}

const pointsOf = (polygons: readonly ReliefPolygon[]): readonly Point3[] => polygons.flat(2);

function areaOf(polygons: readonly ReliefPolygon[]): number {
  return polygons.flat().reduce((sum, ring) => {
    const twice = ring.reduce((s, [x, y], i) => {
      const [nx, ny] = ring[(i + 1) % ring.length];
      return s + x * ny - nx * y;
    }, 0);
    return sum + twice / 2;
  }, 0);
}

const dot = (x: number, y: number, more: Readonly<Record<string, unknown>> = {}) => ({
  path: circle(x, y, 0.15),
  height: 0.4,
  ...more,
});

describe("the pattern", () => {
  it("unites regions of one section and keeps others apart", () => {
    const { pattern } = make({ regions: [dot(0.3, 0), dot(0.4, 0), dot(0.7, 0.2, { height: 0.6, name: "high" })] });
    expect(pattern.bodies.map(({ names }) => names)).toEqual([["region 1", "region 2"], ["high"]]);
    expect(pattern.bodies.map(({ top }) => top.length)).toEqual([1, 1]);
    expect(pattern.height).toBe(0.6);
  });

  it("repeats in rows", () => {
    const { pattern, fit } = make({ fit: { rows: 3 }, regions: [dot(0.5, 0)] });
    const [{ top }] = pattern.bodies;
    expect(top).toHaveLength(3);
    const middles = top.map(
      ([outer]) => (Math.max(...outer.map(([, y]) => y)) + Math.min(...outer.map(([, y]) => y))) / 2,
    );
    expect(middles.sort((a, b) => a - b).map((y) => Math.round(y / fit.tileHeight))).toEqual([-1, 0, 1]);
    expect(areaOf(top)).toBeLessThan(3 * Math.PI * (0.15 * fit.tileWidth) ** 2);
    expect(areaOf(top)).toBeGreaterThan(0.97 * 3 * Math.PI * (0.15 * fit.tileWidth) ** 2);
    expect(pattern.repeats).toBe(fit.repeats);
  });

  it("goes on beneath the rail where it meets the seat's edge, and leaves the rest as drawn", () => {
    const slanted = { path: "M 0.2 0 L 0.5 0.5 H 0.9 L 0.6 0 Z", height: 0.4, round: 0.05 };
    const { pattern, profile, fit } = make({ regions: [slanted] });
    const points = pointsOf(pattern.bodies[0].outline);
    const top = Math.max(...points.map(([, y]) => y));
    expect(top).toBeCloseTo(profile.seatLength / 2 + 0.05 + 0.05, 5);
    // The slanted sides stay on their lines: x − 0.2 = 0.6 y and x − 0.6 = 0.6 y in tile widths.
    for (const [x, y] of points.filter((point) => point[1] > 0.1)) {
      const start = x / fit.tileWidth - 0.6 * (y / fit.tileWidth);
      const wrapped = start - Math.floor(start);
      expect(Math.min(Math.abs(wrapped - 0.2), Math.abs(wrapped - 0.6))).toBeLessThan(1e-5);
    }
    const plain = make({ regions: [{ ...slanted, round: 0 }] }, [], { form: "flat", edge: 0.15 });
    const edge = Math.max(...pointsOf(plain.pattern.bodies[0].outline).map(([, y]) => y));
    expect(edge).toBeCloseTo(plain.profile.seatLength / 2, 5);
  });

  it("refuses what reaches beyond the seat", () => {
    const wide = { path: "M 0 0.45 H 1", ribbon: { width: 1 }, height: 0.4 };
    const error = failureOf(() => make({ regions: [dot(0.5, 0), wide] }));
    expect([error.code, error.path]).toEqual(["region-outside-seat", "pattern.regions[1]"]);
    const [, over] = /reaches ([\d.]+) mm beyond/.exec(error.message) ?? [];
    const { profile, fit } = make({ regions: [dot(0.5, 0)] });
    expect(Number(over)).toBeCloseTo(0.45 * fit.tileWidth + 0.5 - profile.seatLength / 2, 2);
  });
});

describe("a pattern that stops", () => {
  const lattice = {
    cover: 150,
    symmetry: "p2mm",
    regions: [
      { path: "M 0 0 L 0.5 0.4", ribbon: { width: 0.6 }, height: 0.4, round: 0.05, beads: { diameter: 0.3 } },
      { path: "M 0 0.4 H 1", ribbon: { width: 0.4 }, height: 0.5 },
    ],
  };

  it("has nothing outside its cover, and ends there", () => {
    const { pattern, fit } = make(lattice, [{ along: { path: "M 0 0 H 1", unit: "tile" }, diameter: 0.3 }]);
    const total = fit.repeats * fit.tileWidth;
    expect(total).toBeCloseTo(2 * Math.PI * fit.referenceRadius * (150 / 360), 9);
    expect(pattern.repeats).toBe(1);
    for (const { outline, top, seam } of pattern.bodies) {
      expect(seam).toBeUndefined();
      const xs = [...pointsOf(outline), ...pointsOf(top)].map(([x]) => x);
      expect(Math.min(...xs)).toBeCloseTo(0, 5);
      expect(Math.max(...xs)).toBeCloseTo(total, 5);
      expect(areaOf(top)).toBeCloseTo(areaOf(outline), 5);
    }
    for (const { lines, copies } of pattern.beadLines) {
      expect(copies).toBe(1);
      for (const { points } of lines) {
        expect(points.length).toBeGreaterThan(1);
        const length = points.reduce(
          (sum, [x, y], i) => (i === 0 ? 0 : sum + Math.hypot(x - points[i - 1][0], y - points[i - 1][1])),
          0,
        );
        expect(length).toBeGreaterThan(0.1);
        for (const [x] of points) expect(x > -1e-6 && x < total + 1e-6).toBe(true);
      }
    }
  });

  it("is the endless pattern, cut off: what crosses the first tile's border is there at both ends", () => {
    const { pattern, fit } = make({ cover: 150, regions: [dot(1, 0)] });
    const [{ outline }] = pattern.bodies;
    expect(outline).toHaveLength(fit.repeats + 1);
    const disc = Math.PI * (0.15 * fit.tileWidth) ** 2;
    expect(areaOf(outline) / disc).toBeGreaterThan(0.97 * fit.repeats);
    expect(areaOf(outline) / disc).toBeLessThan(fit.repeats);
  });

  it("closes what its images close, at its ends too", () => {
    const { codes } = make({
      cover: 150,
      symmetry: "p2mm",
      regions: [{ path: "M 0.3 0 A 0.3 0.3 0 0 1 0 0.3", height: 0.4 }],
    });
    expect(codes).toEqual([]);
  });
});

describe("bead lines", () => {
  it("go on the centre, the border, or inside it", () => {
    const on = (place: unknown) =>
      make({ regions: [dot(0.5, 0, { ribbon: { width: 0.4 }, beads: { diameter: 0.3, on: place } })] });
    const radius = (made: Made) => {
      const [{ lines }] = made.pattern.beadLines;
      const xs = lines[0].points.map(([x]) => x);
      return (Math.max(...xs) - Math.min(...xs)) / 2;
    };
    const drawn = 0.15 * on("border").fit.tileWidth;
    expect(radius(on("border"))).toBeCloseTo(drawn, 2);
    expect(radius(on("centre"))).toBeCloseTo(drawn - 0.2, 2);
    expect(radius(on(0.1))).toBeCloseTo(drawn - 0.1, 2);
    expect(on("border").pattern.beadLines[0]).toMatchObject({
      run: "region 1",
      path: "pattern.regions[0].beads",
      height: 0.4,
      bead: { diameter: 0.3, pitch: 1.05, embed: 0.5, count: undefined },
    });
  });

  it("need a centre line, and a place inside", () => {
    const beads = (on: unknown) => failureOf(() => make({ regions: [dot(0.5, 0, { beads: { diameter: 0.3, on } })] }));
    expect([beads("centre").code, beads("centre").path]).toEqual(["no-centre-line", "pattern.regions[0].beads.on"]);
    expect(beads(5).code).toBe("beads-off-region");
  });

  it("follow paths of the tile, and need a tile for it", () => {
    const run = { along: { path: "M 0 0.2 H 1", unit: "tile" }, diameter: 0.4, pitch: 1.2, height: 0.1 };
    const { pattern, fit } = make({}, [{ along: "rail", diameter: 0.4 }, run]);
    expect(pattern.beadLines).toMatchObject([
      { run: "path 2", path: "beads[1]", copies: fit.repeats, height: 0.1, bead: { pitch: 1.2 } },
    ]);
    expect(pattern.bodies).toEqual([]);
    const error = failureOf(() => noPattern([beadRunSchema.parse(run)]));
    expect([error.code, error.path]).toEqual(["no-pattern", "beads[0].along.path"]);
    expect(noPattern([beadRunSchema.parse({ along: "rail", diameter: 0.4 })])).toMatchObject({ repeats: 1, height: 0 });
  });
});

describe("the same input", () => {
  const { pattern: art, beads } = JSON.parse(
    readFileSync(new URL("../../examples/saltmarsh-lattice.json", import.meta.url), "utf8"),
  );

  it("gives the same pattern, and is left as it was", () => {
    // The input is frozen throughout: writing to it would throw.
    const first = make(art, beads);
    expect(make(art, beads).pattern).toEqual(first.pattern);
    expect(first.codes).toEqual([]);
    expect(first.pattern.bodies.length).toBeGreaterThan(0);
  });
});
