import { describe, expect, it } from "vitest";
import { signedVolume } from "../../src/mesh/volume.js";
import type { Fade, FlatBody } from "../../src/relief/flat-body.js";
import { fadeBody, fadedRise } from "../../src/solids/fade.js";
import { box } from "../support/meshes.js";

const SINK = 0.4;
const fade: Fade = { ends: [0, 10], length: 4, tolerance: 1e-3 };
const shape = (height: number): Pick<FlatBody, "fade" | "height"> => ({ fade, height });

/** A block 10 mm long and 3 mm wide, from its foot to a height, faded. */
const block = (height: number, by: Pick<FlatBody, "fade" | "height"> = shape(height)) =>
  fadeBody(box([10, 3, height + SINK], [0, 0, -SINK]), by, SINK);

/** 3t² − 2t³ of the distance to the nearer end. */
const share = (u: number) => {
  const t = Math.min(1, Math.min(u, 10 - u) / 4);
  return 3 * t ** 2 - 2 * t ** 3;
};

describe("relief that fades", () => {
  it("lies at h s − dip (1 − s) where it stood at h, by half its foot's depth at its very ends", () => {
    const { positions } = block(1);
    const highest = new Map<number, number>();
    for (let i = 0; i < positions.length; i += 3) {
      const [u, , h] = positions.subarray(i, i + 3);
      highest.set(u, Math.max(h, highest.get(u) ?? Number.NEGATIVE_INFINITY));
    }
    expect(highest.size).toBeGreaterThan(20);
    for (const [u, h] of highest) expect(h).toBeCloseTo(share(u) - 0.2 * (1 - share(u)), 12);
    expect([highest.get(0), highest.get(10)]).toEqual([expect.closeTo(-0.2, 12), expect.closeTo(-0.2, 12)]);
  });

  it("has the volume of its profile: 3 (h ∫ s − dip ∫ (1 − s) + 10 sink)", () => {
    // Each end of 4 mm holds ∫ (3t² − 2t³) dt = 1/2 of its length, so ∫ s = 2 + 2 + 2.
    const volume = 3 * (1 * (2 + 4) - 0.2 * 4 + 10 * SINK);
    expect(Math.abs(signedVolume(block(1)) - volume)).toBeLessThan(3 * 8 * fade.tolerance);
  });

  it("keeps its foot where it is", () => {
    const { positions } = block(1);
    const feet = Array.from({ length: positions.length / 3 }, (_, i) => positions[3 * i + 2]).filter(
      (h) => h <= -SINK + 1e-12,
    );
    expect(Math.min(...feet)).toBe(-SINK);
    expect(feet.length).toBeGreaterThanOrEqual(4);
  });

  it("is finer where the tolerance is", () => {
    const coarse = block(1, { fade: { ...fade, tolerance: 1e-2 }, height: 1 });
    expect(coarse.positions.length).toBeLessThan(block(1).positions.length);
  });

  it("that has no fade is the very same mesh", () => {
    const mesh = box();
    expect(fadeBody(mesh, { fade: undefined, height: 1 }, SINK)).toBe(mesh);
  });
});

describe("a rise that fades with its body", () => {
  const rise = { at: (u: number, v: number) => 2 + u + v, from: 0.5, step: 0.1, tolerance: 0.01 };

  it("is less by the same share, and all else of it stays", () => {
    const faded = fadedRise(rise, fade);
    expect(faded).toMatchObject({ from: 0.5, step: 0.1, tolerance: 0.01 });
    for (const u of [0, 1, 2, 3.9, 5, 7, 10]) expect(faded.at(u, 1)).toBeCloseTo((3 + u) * share(u), 12);
    expect(fadedRise(rise, undefined)).toBe(rise);
  });
});
