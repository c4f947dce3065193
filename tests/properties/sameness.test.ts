// Across: designs that must make the same ring
/**
 * Designs that are drawn differently and must be the same ring.
 */
import { build } from "annulet";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FriezeName, friezeGroups } from "../../src/base/frieze/symmetry.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { SEED } from "../band/profile/specs.js";
import { bodiesOf } from "../support/stages.js";
import { between, COARSE, pathOf, polygon, profile, symmetry } from "./designs.js";

type Ring = [number, number][];

/** A polygon inside the fundamental region of every group, clear of its borders. */
const quarter = polygon(between(0.1, 0.15), between(0.15, 0.3), between(0.03, 0.085));

interface Drawing {
  readonly profile: object;
  readonly symmetry: FriezeName;
  readonly repeats?: number;
  readonly aspect?: number;
  readonly paths: readonly string[];
  readonly height: number;
  readonly diameter?: number;
}

const document = ({ profile: band, symmetry: group, repeats = 10, aspect = 1, paths, height, diameter }: Drawing) => ({
  annulet: 1,
  size: { diameter: diameter ?? 17.3 },
  tolerance: COARSE,
  profile: band,
  pattern: {
    fit: { repeats, aspect, hold: "band" },
    symmetry: group,
    regions: paths.map((path) => ({ path, height, round: 0.04 })),
  },
  proud: true,
});

const reliefVolume = (drawing: Drawing) =>
  bodiesOf(document(drawing)).parts.reliefs.reduce((sum, body) => sum + signedVolume(body), 0);

/** Area of all raised outlines round the band, mm². */
function flatArea(drawing: Drawing): number {
  const { pattern } = bodiesOf(document(drawing));
  const rings = pattern.bodies.flatMap(({ outline }) => outline.flat());
  const shoelace = (ring: (typeof rings)[number]) =>
    ring.reduce((sum, [x, y], i) => {
      const [nx, ny] = ring[(i + 1) % ring.length];
      return sum + (x * ny - nx * y) / 2;
    }, 0);
  return pattern.repeats * rings.reduce((sum, ring) => sum + shoelace(ring), 0);
}

/** The images of a polygon under a group's operations, in tile widths; turned to run the same way round. */
function images(ring: Ring, group: FriezeName): Ring[] {
  const found = friezeGroups.find(({ name }) => name === group);
  if (found === undefined) throw new Error(group);
  return found.operations.map(({ flipX, flipY, shift }) => {
    const image = ring.map(([x, y]): [number, number] => [(flipX ? -x : x) + shift, flipY ? -y : y]);
    return flipX === flipY ? image : image.reverse();
  });
}

const height = between(0.2, 0.6);

describe("a tile completed by its symmetry", () => {
  it("is the tile drawn whole, in every group", () => {
    fc.assert(
      fc.property(profile, quarter, symmetry, height, (band, ring, group, h) => {
        const name = group as FriezeName;
        const drawn = { profile: band, height: h };
        const completed = reliefVolume({ ...drawn, symmetry: name, paths: [pathOf(ring)] });
        const whole = reliefVolume({ ...drawn, symmetry: "p1", paths: images(ring, name).map(pathOf) });
        const once = reliefVolume({ ...drawn, symmetry: "p1", paths: [pathOf(ring)] });
        expect(Math.abs(completed / whole - 1)).toBeLessThan(1e-4);
        // The profiles are symmetric, so each image has as much metal.
        expect(Math.abs(completed / once / images(ring, name).length - 1)).toBeLessThan(1e-2);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("is one ring with the tile drawn whole once all is united", async () => {
    await fc.assert(
      fc.asyncProperty(profile, quarter, async (band, ring) => {
        const drawn = { profile: band, height: 0.4 };
        const [completed, whole] = await Promise.all([
          build(document({ ...drawn, symmetry: "p2mm", paths: [pathOf(ring)] })),
          build(document({ ...drawn, symmetry: "p1", paths: images(ring, "p2mm").map(pathOf) })),
        ]);
        expect(whole.report.genus).toBe(completed.report.genus);
        expect(Math.abs(whole.report.volume / completed.report.volume - 1)).toBeLessThan(1e-5);
        expect(Math.abs(whole.report.area / completed.report.area - 1)).toBeLessThan(1e-5);
      }),
      { seed: SEED, numRuns: 8 },
    );
  });
});

describe("repeats", () => {
  it("may be drawn two at a time in a tile of half the aspect", () => {
    fc.assert(
      fc.property(profile, quarter, fc.integer({ min: 2, max: 8 }), between(0.8, 1.4), (band, ring, half, aspect) => {
        const drawn = { profile: band, height: 0.4, symmetry: "p1" as const };
        const one = flatArea({ ...drawn, repeats: 2 * half, aspect, paths: [pathOf(ring)] });
        const pair = [0, 1].map((tile) => ring.map(([x, y]): [number, number] => [(x + tile) / 2, y / 2]));
        const two = flatArea({ ...drawn, repeats: half, aspect: aspect / 2, paths: pair.map(pathOf) });
        // Whole facets a tile may be another number, so the flat patterns are compared.
        expect(Math.abs(two / one - 1)).toBeLessThan(1e-5);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("turn into each other: the ring is itself again after one tile", () => {
    fc.assert(
      fc.property(profile, quarter, fc.integer({ min: 3, max: 12 }), (band, ring, repeats) => {
        const { parts } = bodiesOf(
          document({ profile: band, symmetry: "p1", repeats, paths: [pathOf(ring)], height: 0.4 }),
        );
        const [cos, sin] = [Math.cos((2 * Math.PI) / repeats), Math.sin((2 * Math.PI) / repeats)];
        for (const body of [parts.band, ...parts.reliefs]) {
          const turned = transformMesh(body, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
          expect(cloud(turned.positions)).toEqual(cloud(body.positions));
        }
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
});

/** Vertices rounded to 1e-7 mm, sorted, as text. */
function cloud(positions: Float64Array): string[] {
  return Array.from({ length: positions.length / 3 }, (_, i) =>
    [0, 1, 2].map((k) => (Math.round(positions[3 * i + k] * 1e7) / 1e7 + 0).toFixed(6)).join(" "),
  ).sort();
}

describe("a region drawn in another way", () => {
  it("moved by a whole tile, turned round, or begun at another corner is the same relief", () => {
    fc.assert(
      fc.property(profile, quarter, fc.nat(6), (band, ring, from) => {
        const drawn = { profile: band, height: 0.4, symmetry: "p1m1" as const };
        const volume = reliefVolume({ ...drawn, paths: [pathOf(ring)] });
        const start = from % ring.length;
        const others: Ring[] = [
          ring.map(([x, y]) => [x + 1, y]),
          [...ring].reverse(),
          [...ring.slice(start), ...ring.slice(0, start)],
        ];
        for (const other of others) {
          expect(Math.abs(reliefVolume({ ...drawn, paths: [pathOf(other)] }) / volume - 1)).toBeLessThan(1e-4);
        }
      }),
      { seed: SEED, numRuns: 20 },
    );
  });

  it("in millimetres is the same as in tiles", () => {
    fc.assert(
      fc.property(profile, quarter, (band, ring) => {
        const tiles = document({ profile: band, symmetry: "p2", paths: [pathOf(ring)], height: 0.4 });
        const { fit, parts } = bodiesOf(tiles);
        if (fit === undefined) throw new Error("no fit");
        const [sx, sy] = [fit.tileWidth, fit.tileHeight / fit.aspect];
        const path = pathOf(ring.map(([x, y]): [number, number] => [x * sx, y * sy]));
        const inMm = bodiesOf({
          ...tiles,
          pattern: { ...tiles.pattern, regions: [{ path, unit: "mm", height: 0.4, round: 0.04 }] },
        });
        const [a, b] = [parts, inMm.parts].map(({ reliefs }) => signedVolume(reliefs[0]));
        expect(Math.abs(a / b - 1)).toBeLessThan(1e-3);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
});

describe("a plain band", () => {
  it("grows by what Pappus says when its finger does", async () => {
    await fc.assert(
      fc.asyncProperty(profile, between(15, 20), between(0.2, 2), async (band, diameter, more) => {
        const of = async (d: number) =>
          (await build({ annulet: 1, size: { diameter: d }, tolerance: 0.001, profile: band })).report;
        const [small, large] = [await of(diameter), await of(diameter + more)];
        // V = 2π r̄ A, so the volume grows by π A a mm of diameter, whatever the size.
        const again = await of(diameter + 2 * more);
        expect((again.volume - large.volume) / (large.volume - small.volume)).toBeCloseTo(1, 2);
      }),
      { seed: SEED, numRuns: 10 },
    );
  });
});
