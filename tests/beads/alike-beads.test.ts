import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { broughtBy, mirrorAt } from "../../src/base/math/about-axis.js";
import type { Point3 } from "../../src/base/math/point.js";
import { mirrorBeads, turnBeads } from "../../src/beads/alike-beads.js";
import type { Bead } from "../../src/beads/bead.js";
import { SIZE_SHARE } from "../../src/beads/bead-index.js";
import { SEED } from "../band/profile/specs.js";

const SAME = 0.05;

/** A circle of beads, each moved and sized by its own jitter. */
const circle = (count: number, jitter: (i: number) => number = () => 0): Bead[] =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count + jitter(4 * i) / 9;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return {
      centre: [9 * cos, 9 * sin, 1 + jitter(4 * i + 1)],
      outward: [cos, sin, 0],
      radius: 0.2 + SIZE_SHARE * jitter(4 * i + 2),
    };
  });

const turned = ([x, y, z]: Point3, angle: number): Point3 => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [x * cos - y * sin, x * sin + y * cos, z];
};

/** Largest distance from any bead's image to the nearest bead. */
const off = (beads: readonly Bead[], image: (point: Point3) => Point3) =>
  Math.max(
    ...beads.map(({ centre, radius }) => {
      const at = image(centre);
      const gaps = beads.map((other) =>
        Math.max(Math.hypot(...at.map((value, k) => value - other.centre[k])), Math.abs(radius - other.radius)),
      );
      return Math.min(...gaps);
    }),
  );

const jitters = fc.infiniteStream(fc.double({ min: -SAME / 5, max: SAME / 5, noNaN: true })).map((stream) => {
  const known: number[] = [];
  return (i: number) => {
    while (known.length <= i) known.push(stream.next().value as number);
    return known[i];
  };
});

describe("beads made alike by turns", () => {
  it("come again exactly, none moved farther than the tolerance", () => {
    fc.assert(
      fc.property(jitters, fc.constantFrom(2, 3, 4, 6, 12), (jitter, units) => {
        const drawn = circle(12, jitter);
        const beads = turnBeads(drawn, units, SAME) as readonly Bead[];
        expect(off(beads, (point) => turned(point, (2 * Math.PI) / units))).toBeLessThan(1e-12);
        beads.forEach(({ centre, outward }, i) => {
          expect(Math.hypot(...centre.map((value, k) => value - drawn[i].centre[k]))).toBeLessThan(SAME);
          expect(Math.hypot(...outward)).toBeCloseTo(1, 12);
        });
      }),
      { seed: SEED },
    );
  });

  it("are none where there is one more or fewer than the units could share, however near each is to an image", () => {
    // 129 beads in 32 parts: each image is 1/32 of a spacing, 14 µm, beside a bead.
    expect(off(circle(129), (point) => turned(point, (2 * Math.PI) / 32))).toBeLessThan(SAME / 3);
    expect(turnBeads(circle(129), 32, 3 * SAME)).toBeUndefined();
    expect(turnBeads(circle(128), 32, 3 * SAME)).toHaveLength(128);
    expect(turnBeads(circle(127), 32, 3 * SAME)).toBeUndefined();
  });

  it("are none where small steps from each to the next add up to more than may be", () => {
    // Beads crowd on one side: an image is at most a quarter of SAME beside the next, but some are three times SAME aside.
    const crowded = circle(96, (i) => (i % 4 === 0 ? 3 * SAME * Math.sin((2 * Math.PI * i) / 4 / 96) : 0));
    expect(off(crowded, (point) => turned(point, (2 * Math.PI) / 96))).toBeLessThan(SAME / 4);
    expect(turnBeads(crowded, 96, SAME)).toBeUndefined();
    // Likewise sizes that go up and down once round, by a tenth of what is allowed from each to the next.
    const graded = circle(96).map((bead, i) => ({ ...bead, radius: 0.2 + SAME * SIZE_SHARE * Math.abs(i - 48) * 0.1 }));
    expect(turnBeads(graded, 96, SAME)).toBeUndefined();
  });

  it("are none where two sizes stand by turns, however little they differ from a tolerance", () => {
    const byTurns = circle(24).map((bead, i) => ({ ...bead, radius: i % 2 === 0 ? 0.2 : 0.2 + 0.3 * SAME }));
    expect(turnBeads(byTurns, 24, SAME)).toBeUndefined();
    expect(turnBeads(byTurns, 12, SAME)).toHaveLength(24);
  });

  it("are none where one is missing, elsewhere or of another size", () => {
    const beads = circle(12);
    expect(turnBeads(beads.slice(1), 3, SAME)).toBeUndefined();
    const other = (change: Partial<Bead>) => [{ ...beads[0], ...change }, ...beads.slice(1)];
    expect(turnBeads(other({ centre: [9, 0, 1.2] }), 3, SAME)).toBeUndefined();
    expect(turnBeads(other({ radius: 0.3 }), 3, SAME)).toBeUndefined();
    expect(turnBeads(other({}), 3, SAME)).toHaveLength(12);
  });
});

describe("beads made alike by a mirror", () => {
  const mirror = mirrorAt(0);
  const flip = (point: Point3) => broughtBy(mirror, point);

  it("are their images exactly, those on it in its plane", () => {
    fc.assert(
      fc.property(jitters, (jitter) => {
        const drawn = circle(12, jitter);
        const beads = mirrorBeads(drawn, mirror, SAME) as readonly Bead[];
        expect(off(beads, flip)).toBeLessThan(1e-12);
        expect(Math.abs(beads[0].centre[1])).toBeLessThan(1e-12);
        expect(Math.abs(beads[0].outward[1])).toBeLessThan(1e-12);
      }),
      { seed: SEED },
    );
  });

  it("are none where one has no image, or two have the same", () => {
    expect(mirrorBeads(circle(12).slice(0, 11), mirror, SAME)).toBeUndefined();
    const [bead] = circle(12).slice(1);
    const twin = { ...bead, centre: [bead.centre[0], bead.centre[1] + SAME / 2, bead.centre[2]] as const };
    const image = { ...bead, centre: flip(bead.centre) };
    expect(mirrorBeads([bead, image], mirror, SAME)).toHaveLength(2);
    expect(mirrorBeads([bead, twin, image], mirror, SAME)).toBeUndefined();
  });
});
