// Across: tiles that keep their size where the pattern stops, beside a medallion and on curved seats
/**
 * The area of art that is cut off at the edge of a seat that narrows, held against strips across the seat: of each tile's
 * triangle what lies within the seat's width there, by the band's own section.
 */
import { describe, expect, it } from "vitest";
import type { Band } from "../../src/band/band.js";
import type { Fit } from "../../src/band/fit/fit.js";
import type { BandSurface } from "../../src/band/surface/surface.js";
import { polygonArea } from "../../src/base/math/polygon.js";
import { openInside } from "../../src/ring/open-ring.js";

const REPEATS = 12;

/** A triangle in the tile, 1 wide: the art. Its first two corners are the lower ones. */
const TRIANGLE = [
  [0.1, -0.4],
  [0.6, -0.3],
  [0.4, 0.4],
] as const;

/** A rectangle in a medallion of two tiles, whose y reaches from −0.25 to 0.25. */
const MEDALLION = {
  tiles: 2,
  regions: [{ path: "M 0.2 -0.2 H 0.8 V 0.22 H 0.2 Z", height: 0.3 }],
};

const FLAT = { form: "flat", edge: 0 };
const KNIFE = { form: "knife", rise: 0.6, ridge: 0.2, edge: 0 };

const cases: readonly (readonly [name: string, outside: object, pattern: { cover?: number; medallion?: object }])[] = [
  ["a pattern that stops", FLAT, { cover: 250 }],
  ["a domed seat", { form: "domed", rise: 0.6, edge: 0 }, {}],
  ["a pattern that stops on a concave seat", { form: "concave", dip: 0.3, edge: 0 }, { cover: 250 }],
  ["a medallion", FLAT, { medallion: MEDALLION }],
  ["a medallion on a knife", KNIFE, { medallion: MEDALLION }],
];

describe("tiles that keep their size are cut off at the seat's edge alone", () => {
  it.each(cases)("with %s", async (_, outside, pattern) => {
    const path = `M ${TRIANGLE.map((point) => point.join(" ")).join(" L ")} Z`;
    const { answers } = await openInside({
      annulet: 1,
      size: { diameter: 17 },
      tolerance: 0.02,
      profile: { width: 8, thickness: 2, bore: FLAT, outside, taper: { width: 4 } },
      pattern: {
        fit: { repeats: REPEATS, taper: "keep", hold: "band" },
        regions: [{ path, height: 0.4 }],
        ...pattern,
      },
      proud: true,
    }).ask(["pattern", "fit", "profile", "wrap"]);
    const { fit, profile, wrap } = answers;
    if (fit === undefined) throw new Error("no fit");
    const outlines = answers.pattern.bodies.flatMap((body) => body.outline.flat());
    const area = outlines.reduce((sum, ring) => sum + polygonArea(ring.map(([u, v]) => [u, v])), 0);
    const taken = pattern.medallion === undefined ? 0 : MEDALLION.tiles;
    // The medallion stands at the top, where the seat is widest and cuts nothing off.
    const medallion = taken === 0 ? 0 : 0.6 * taken * fit.tileWidth * (0.42 / 0.5) * fit.tileHeight;
    const whole = cutTriangles(fit, { band: profile, wrap, taken }, Number.POSITIVE_INFINITY);
    const expected = cutTriangles(fit, { band: profile, wrap, taken }, 1);
    // Strips and straightened edges: a share of 0.001 of it; what is cut off is far more.
    expect(area / (expected + medallion)).toBeCloseTo(1, 3);
    expect(expected / whole).toBeLessThan(0.99);
  });
});

interface Seat {
  readonly band: Band;
  readonly wrap: BandSurface;
  /** Tiles in the middle that a medallion takes the place of. */
  readonly taken: number;
}

/** Strips that a tile is parted into. */
const STRIPS = 500;

/** Area of the triangles on the seat, whose width is taken so many times, mm². */
function cutTriangles({ tileWidth, tileHeight }: Fit, { band, wrap, taken }: Seat, times: number): number {
  let sum = 0;
  for (let tile = 0; tile < REPEATS; tile++) {
    if (Math.abs(tile + 0.5 - REPEATS / 2) < taken / 2) continue;
    for (let i = 0; i < STRIPS; i++) {
      const x = (i + 0.5) / STRIPS;
      const half = (band.sectionAt(wrap.angleAt((tile + x) * tileWidth)).seatLength / 2) * times;
      const [low, high] = across(x).map((y) => Math.max(-half, Math.min(half, y * tileHeight)));
      sum += ((high - low) * tileWidth) / STRIPS;
    }
  }
  return sum;
}

/** From y to y of the triangle at x; equal where it is not. */
function across(x: number): [number, number] {
  const ys = TRIANGLE.flatMap(([ax, ay], i) => {
    const [bx, by] = TRIANGLE[(i + 1) % TRIANGLE.length];
    return ax > x === bx > x ? [] : [ay + ((x - ax) / (bx - ax)) * (by - ay)];
  });
  return ys.length === 0 ? [0, 0] : [Math.min(...ys), Math.max(...ys)];
}
