import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import type { Bead } from "../../src/beads/bead.js";
import { buildBeads } from "../../src/beads/bead-bodies.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { SEED } from "../band/profile/specs.js";

const beadAt = (angle: number, z = 0, radius = 0.2): Bead => {
  const outward: Point3 = [Math.cos(angle), Math.sin(angle), 0];
  return { centre: [9 * outward[0], 9 * outward[1], z], radius, outward };
};

const coarse = { tolerance: 0.05, coarsest: 0.04 };

/** A bead of radius 0.2 whose centre is farther away than this reaches nowhere near, mm. */
const CLEAR = 0.25;

describe("the beads over a sector", () => {
  it("are all where none is given, each of its own size (4/3 π r³)", () => {
    const beads = [beadAt(0), beadAt(2, 1, 0.3), beadAt(4)];
    const bodies = buildBeads(beads, { tolerance: 0.002, coarsest: 0.04 });
    bodies.forEach((body, i) => {
      // A surface within a hundredth of the radius of the sphere has a volume within three hundredths.
      expect(Math.abs(signedVolume(body) / ((4 / 3) * Math.PI * beads[i].radius ** 3) - 1)).toBeLessThan(0.03);
    });
    expect(bodies).toHaveLength(3);
    // Beads of one size share one mesh of a sphere.
    expect(bodies[2].triangles).toEqual(bodies[0].triangles);
  });

  it("are those of which a point lies over it, and few others", () => {
    const angle = fc.double({ min: -7, max: 7, noNaN: true });
    const wide = fc.double({ min: 0.05, max: 3.1, noNaN: true });
    fc.assert(
      fc.property(fc.array(angle, { maxLength: 25 }), angle, wide, fc.boolean(), (angles, from, width, upper) => {
        const beads = angles.map((at, i) => beadAt(at, (i % 5) * 0.1 - 0.2));
        const bodies = buildBeads(beads, { ...coarse, sector: { from, to: from + width, upper } });
        const has = new Set(bodies.map(({ positions }) => [...positions.subarray(0, 3)].join(" ")));
        const all = buildBeads(beads, coarse);
        /** Angle from the sector's start, from 0 to a turn. */
        const past = (x: number, y: number) => {
          const turns = (Math.atan2(y, x) - from) / (2 * Math.PI);
          return 2 * Math.PI * (turns - Math.floor(turns));
        };
        all.forEach(({ positions: p }, i) => {
          const taken = has.has([...p.subarray(0, 3)].join(" "));
          const vertices = Array.from({ length: p.length / 3 }, (_, v) => v);
          const isOver = vertices.some((v) => past(p[3 * v], p[3 * v + 1]) <= width && (!upper || p[3 * v + 2] >= 0));
          if (isOver) expect(taken).toBe(true);
          const [x, y, z] = beads[i].centre;
          const at = past(x, y);
          const beside = 9 * Math.min(at <= width ? 0 : at - width, 2 * Math.PI - at);
          if (beside > CLEAR || (upper && z < -CLEAR)) expect(taken).toBe(false);
        });
      }),
      { seed: SEED },
    );
  });
});
