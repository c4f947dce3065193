import { build } from "annulet";
import { describe, expect, it } from "vitest";
import type { BandSurface } from "../../src/band/surface/surface.js";
import type { Point3 } from "../../src/base/math/point.js";
import { findCrossings } from "../../src/mesh/crossings.js";
import { requireEndsApart } from "../../src/solids/ends-apart.js";
import { failureOf } from "../support/failure-of.js";

const surface = { round: 60 } as BandSurface;
const around = (outline: readonly Point3[], seam?: readonly [number, number]) =>
  requireEndsApart({ outline: [[outline]], seam }, surface);

/** From u to u, on v from −1 to 1 at its start and moved by so much at its end. */
const strip = (low: number, high: number, aside = 0): Point3[] => [
  [low, -1, 0],
  [high, aside - 1, 0],
  [high, aside + 1, 0],
  [low, 1, 0],
];

describe("the ends of a pattern", () => {
  it("may come as near as a twentieth of a millimetre, and no nearer", () => {
    expect(() => around(strip(-0.1, 59.84))).not.toThrow();
    const error = failureOf(() => around(strip(-0.1, 59.96)));
    // 60.06 + 0.05 − 60 = 0.11 mm too far, of 60 mm 0.66°.
    expect(error).toMatchObject({
      code: "ends-meet",
      path: "pattern.cover",
      allowed: "360, or at least 0.7° less than now",
    });
  });

  it("do not meet where the pattern goes on all round, or where they pass each other side by side", () => {
    expect(() => around(strip(0, 61), [0, 60])).not.toThrow();
    expect(() => around(strip(0, 61, 3))).not.toThrow();
    expect(() => around(strip(0, 61, 1.9))).toThrow();
  });
});

describe("a drafted bar over nearly all of the band", () => {
  const ring = (cover: number) => ({
    annulet: 1,
    size: { diameter: 17.5 },
    tolerance: 0.06,
    profile: { width: 5, thickness: 2, bore: { form: "flat" }, outside: { form: "flat" } },
    proud: true,
    pattern: {
      fit: { repeats: 8, hold: "band" },
      symmetry: "p1",
      cover,
      regions: [{ path: "M 0 -0.2 H 1 V 0.2 H 0 Z", section: { form: "flat", height: 0.5, draft: 15 } }],
    },
  });

  it("is refused where its feet meet at the back, and made as far as it is told that it fits", async () => {
    // Each foot reaches 0.5 tan 15° beyond the end; the reference radius is 10.75 mm.
    const over = 2 * 0.5 * Math.tan(Math.PI / 12) + 0.05 - (2 * Math.PI * 10.75) / 360;
    const less = Math.ceil((10 * 360 * over) / (2 * Math.PI * 10.75)) / 10;
    await expect(build(ring(359))).rejects.toMatchObject({
      code: "ends-meet",
      allowed: `360, or at least ${less.toFixed(1)}° less than now`,
    });
    const { mesh, report } = await build(ring(359 - less));
    expect(report.genus).toBe(1);
    expect((await findCrossings(mesh)).deepest).toBeLessThan(1e-4);
  });
});
