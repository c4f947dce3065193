import { describe, expect, it } from "vitest";
import { Memory } from "../../src/base/memory.js";
import { STAY } from "../../src/flat/motion.js";
import { checkSolid } from "../../src/judge/gate.js";
import { measureMesh } from "../../src/measure/measure.js";
import { build } from "../../src/ring/build.js";
import { bodyImages } from "../../src/solids/body-images.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";
import { farthest } from "../support/farthest.js";
import { bodiesOf } from "../support/stages.js";

const TOLERANCE = 0.02;

const band = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: TOLERANCE,
  profile: {
    width: 6,
    thickness: 2,
    bore: { form: "comfort", rise: 0.2, edge: 0.2 },
    outside: { form: "domed", rise: 0.3, edge: 0.2 },
  },
};

const [REPEATS, TILE] = [9, (Math.PI * 2 * 10.4) / 9];

/** A pattern of one region in general position, or of others. */
const patterned = (
  symmetry: string,
  regions: readonly object[] = [{ path: "M 0.08 0.1 L 0.2 0.16 L 0.12 0.3 Z", height: 0.4 }],
) => ({
  ...band,
  pattern: { fit: { repeats: REPEATS, hold: "band" }, symmetry, regions },
});

const symmetryOf = (document: object) => bodiesOf(document).parts.symmetry;

describe("how a ring comes again", () => {
  it.each([
    ["p1", false, false],
    ["p11g", false, false],
    ["p2", false, false],
    ["p11m", false, true],
    ["p1m1", true, false],
    ["p2mg", true, false],
    ["p2mm", true, true],
  ])(
    "%s: in as many units as tiles, mirrored across %s, and above the middle plane alone %s",
    (group, mirrored, middle) => {
      const found = symmetryOf(patterned(group));
      expect(found).toMatchObject({ units: REPEATS, mirrored });
      const wide = (2 * Math.PI) / REPEATS / (mirrored ? 2 : 1);
      for (const { from, to } of found?.sectors ?? []) expect(to - from).toBeCloseTo(wide, 12);
      expect(found?.sectors.some(({ upper }) => upper === true)).toBe(middle);
    },
  );

  it("is seen of art that is more symmetric than its group", () => {
    const circle = { path: "M 0.4 0 A 0.1 0.1 0 0 1 0.6 0 A 0.1 0.1 0 0 1 0.4 0 Z", height: 0.4 };
    expect(symmetryOf(patterned("p1", [circle]))).toMatchObject({ units: REPEATS, mirrored: true });
    expect(symmetryOf(patterned("p1", [circle]))?.sectors[0].upper).toBe(true);
  });

  it.each([
    [0.25, true],
    [4, false],
  ])("art %f tolerances beside its mirror image: mirrored %s", (tolerances, mirrored) => {
    const aside = (tolerances * TOLERANCE) / TILE;
    const triangle = (sign: number) =>
      [
        [0.2, 0.1],
        [0.35, 0.16],
        [0.27, 0.3],
      ].map(([x, y]) => [0.5 + sign * x + (sign > 0 ? aside : 0), y]);
    // What stands in the middle keeps the mirror there.
    const middle = "M 0.48 0 L 0.5 -0.1 L 0.52 0 L 0.5 0.1 Z";
    const path = [-1, 1]
      .map(
        (sign) =>
          `M ${triangle(sign)
            .map((point) => point.join(" "))
            .join(" L ")} Z`,
      )
      .concat(middle)
      .join(" ");
    expect(symmetryOf(patterned("p1", [{ path, height: 0.4 }]))).toMatchObject({ units: REPEATS, mirrored });
  });

  // Every corner of these has its image on the outline, in a mirror across or along, but whole sides have not.
  it.each([
    ["a square C", "M 0.1 -0.4 H 0.9 V -0.08 H 0.7 V -0.2 H 0.3 V 0.2 H 0.7 V 0.08 H 0.9 V 0.4 H 0.1 Z", true],
    ["a letter E", "M 0.2 -0.4 H 0.8 V -0.25 H 0.4 V -0.08 H 0.8 V 0.08 H 0.4 V 0.25 H 0.8 V 0.4 H 0.2 Z", true],
    ["a frame open below", "M 0.1 -0.4 H 0.4 V -0.2 H 0.3 V 0.2 H 0.7 V -0.2 H 0.6 V -0.4 H 0.9 V 0.4 H 0.1 Z", false],
    ["a step", "M 0.1 -0.3 H 0.5 V 0 H 0.9 V 0.3 H 0.5 V 0.15 H 0.1 Z", false],
  ])("%s is not taken for its mirror image", (_, path, across) => {
    const found = symmetryOf(patterned("p1", [{ path, height: 0.4 }]));
    expect(found?.units).toBe(REPEATS);
    if (across) expect(found?.mirrored).toBe(false);
    else expect(found?.sectors[0].upper ?? false).toBe(false);
  });

  it("builds an open square C, not a closed frame: as much metal as drawn", async () => {
    const path = "M 0.1 -0.4 H 0.9 V -0.08 H 0.7 V -0.2 H 0.3 V 0.2 H 0.7 V 0.08 H 0.9 V 0.4 H 0.1 Z";
    const flat = { ...band.profile, bore: { form: "flat" }, outside: { form: "flat", edge: 0 } };
    const ring = async (regions: readonly object[]) => {
      const { mesh } = await build({ ...patterned("p1", regions), profile: flat, tolerance: 0.004 });
      return measureMesh(mesh).volume;
    };
    const [height, radius] = [0.4, 8.5 + 2];
    const tile = (2 * Math.PI * radius) / REPEATS;
    // Tile fractions: x of the tile's width, y of the seat's share of it. By Pappus the relief's metal lies at its mean radius.
    const area = (0.8 * 0.8 - 0.4 * 0.4 - 0.2 * 0.16) * tile * 6;
    const expected = REPEATS * area * height * (1 + height / 2 / radius);
    expect(((await ring([{ path, height }])) - (await ring([]))) / expected).toBeCloseTo(1, 2);
  });

  it("has no middle plane where the band leans, for all its art has", () => {
    const outside = { form: "free", path: "M -3 1.8 L -2 2 L 2 2 L 3 2", seat: [-2, 2] };
    const leaning = { ...patterned("p2mm"), profile: { ...band.profile, outside } };
    expect(symmetryOf(leaning)?.sectors.some(({ upper }) => upper === true)).toBe(false);
  });

  it("is that of one mirror, in the middle of what it covers, where a pattern stops; none where it leans", () => {
    const cover = 200;
    const stopped = (group: string) => symmetryOf({ ...band, pattern: { ...patterned(group).pattern, cover } });
    const [half] = stopped("p1m1")?.sectors ?? [];
    const whole = symmetryOf(patterned("p1m1"))?.sectors[0].from ?? Number.NaN;
    expect(stopped("p1m1")).toMatchObject({ units: 1, mirrored: true });
    expect(half.to - half.from).toBeCloseTo(Math.PI, 12);
    // A pattern that stops is centred on the top of the ring, and one that goes all the way round begins there or opposite.
    expect(Math.abs(Math.cos(half.from))).toBeLessThan(1e-9);
    expect(Math.abs(Math.cos(whole))).toBeLessThan(1e-9);
    expect(stopped("p2mm")?.sectors.map(({ upper }) => upper === true)).toEqual([true, false]);
    // A glide moves on: what stops has none, and nothing else is left of p11g.
    for (const group of ["p1", "p11g"]) expect(stopped(group)).toBeUndefined();
    const [turned] = stopped("p2")?.sectors ?? [];
    expect(stopped("p2")).toMatchObject({ units: 1, mirrored: false, halfTurned: true });
    expect(turned).toEqual(half);
    for (const group of ["p1m1", "p2mm", "p11m"]) expect(stopped(group)?.halfTurned ?? false).toBe(false);
    const [upper] = stopped("p11m")?.sectors ?? [];
    expect(stopped("p11m")).toMatchObject({ units: 1, mirrored: false });
    expect(upper).toMatchObject({ upper: true });
    expect(upper.to - upper.from).toBeCloseTo(2 * Math.PI, 12);
  });

  it.each([
    ["p1m1", "mirror"],
    ["p2mm", "mirror"],
    ["p11m", "mirror"],
    ["p2", "turn"],
  ])("of a pattern of %s that stops: half of it makes the whole ring", async (group, road) => {
    const { parts } = bodiesOf({ ...band, pattern: { ...patterned(group).pattern, cover: 200 } });
    const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };
    const half = await uniteRing(parts, options);
    const whole = await uniteRing({ ...parts, symmetry: undefined }, options);
    expect([half.road, whole.road]).toEqual([road, "whole"]);
    expect(half.check).toMatchObject({ closed: true, components: 1, genus: whole.check.genus });
    expect(Math.abs(half.check.volume / whole.check.volume - 1)).toBeLessThan(1e-6);
  });

  describe("under a half turn of a cover of one tile", () => {
    const LEFT = "M 0.1 0.05 L 0.3 0.1 L 0.22 0.3 Z";
    const RIGHT = (by: number) => `M ${0.9 + by} -0.05 L ${0.7 + by} -0.1 L ${0.78 + by} -0.3 Z`;
    const TURNED = { path: "M 0.35 -0.2 L 0.5 -0.25 L 0.65 0.2 L 0.5 0.25 Z", height: 0.4 };
    const pair = (right: string, heights = [0.4, 0.4]) => [
      TURNED,
      { path: LEFT, height: heights[0] },
      { path: right, height: heights[1] },
    ];
    const found = (regions: readonly object[], more: object = {}) =>
      symmetryOf({
        ...band,
        pattern: { fit: { repeats: 1, hold: "band" }, symmetry: "p1", cover: 360 / REPEATS, regions },
        ...more,
      })?.halfTurned ?? false;
    const aside = (tolerances: number) => (tolerances * TOLERANCE) / TILE;

    it("takes what is its own image, and what lies as near to it as arcs may", () => {
      expect(found(pair(RIGHT(0)))).toBe(true);
      expect(found(pair(RIGHT(aside(0.25))))).toBe(true);
    });

    it.each([
      ["a region four tolerances aside", pair(RIGHT(aside(4)))],
      ["a region a little higher", pair(RIGHT(0), [0.4, 0.45])],
      ["a region that has no image", [...pair(RIGHT(0)), { path: "M 0.05 0.4 H 0.1 V 0.45 H 0.05 Z", height: 0.4 }]],
      ["the mirror image across instead", pair("M 0.9 0.05 L 0.7 0.1 L 0.78 0.3 Z")],
      ["the mirror image along instead", pair("M 0.1 -0.05 L 0.3 -0.1 L 0.22 -0.3 Z")],
      ["one cut for one raised", [TURNED, { path: LEFT, height: 0.4 }, { path: RIGHT(0), mode: "sunk", depth: 0.4 }]],
      [
        "a Z with one arm longer, each corner of which has its image on the outline",
        [{ path: "M 0.2 -0.3 H 0.6 V 0.1 H 0.8 V 0.3 H 0.4 V -0.1 H 0.3 V 0.3 H 0.2 Z", height: 0.4 }],
      ],
    ])("does not take %s", (_, regions) => {
      expect(found(regions)).toBe(false);
    });

    it("does not take a band that leans, nor beads of which one has no image", () => {
      const outside = { form: "free", path: "M -3 1.8 L -2 2 L 2 2 L 3 2", seat: [-2, 2] };
      expect(found(pair(RIGHT(0)), { profile: { ...band.profile, outside } })).toBe(false);
      const beads = (path: string) => [{ along: { path }, diameter: 0.3, count: 3 }];
      expect(found(pair(RIGHT(0)), { beads: beads("M 0.2 -0.4 L 0.8 0.4") })).toBe(true);
      expect(found(pair(RIGHT(0)), { beads: beads("M 0.2 -0.4 L 0.7 0.4") })).toBe(false);
    });

    it("makes the ring of a body that it cuts through, and of what lies beside it, as one union does", async () => {
      const regions = pair(RIGHT(0));
      const pattern = { fit: { repeats: 1, hold: "band" }, symmetry: "p1", cover: 360 / REPEATS, regions };
      const { parts } = bodiesOf({ ...band, pattern });
      const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };
      const half = await uniteRing(parts, options);
      const whole = await uniteRing({ ...parts, symmetry: undefined }, options);
      expect(half).toMatchObject({ road: "turn", roadReason: "half of the ring, turned over" });
      expect(half.check).toMatchObject({ closed: true, components: 1, genus: 1 });
      expect(Math.abs(half.check.volume / whole.check.volume - 1)).toBeLessThan(1e-6);
      expect(Math.max(farthest(half.mesh, whole.mesh, 1), farthest(whole.mesh, half.mesh, 1))).toBeLessThan(1e-3);
    });

    it("gives way to the whole ring where it is held to be what it is not", async () => {
      const pattern = {
        fit: { repeats: REPEATS, hold: "band" },
        symmetry: "p1",
        cover: 40,
        regions: pair(RIGHT(aside(4))),
      };
      const { parts } = bodiesOf({ ...band, pattern: { ...pattern, regions: pattern.regions.slice(1, 2) } });
      const [from, to] = [Math.PI / 2, (3 * Math.PI) / 2];
      const symmetry = { units: 1, mirrored: false, halfTurned: true, sectors: [{ from, to }] };
      const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };
      const whole = await uniteRing(parts, options);
      const prove = (_: unknown, { volume }: { volume: number }) => ({
        agrees: Math.abs(volume / whole.check.volume - 1) < 1e-6,
      });
      const ring = await uniteRing({ ...parts, symmetry }, { ...options, prove });
      expect(ring.road).toBe("whole");
      expect(ring.roadReason).toMatch(/turn by manifold (was not what was drawn|did not close)/);
    });
  });

  it.each([
    [9, 9],
    [18, 9],
    [24, 3],
    [25, 1],
    [91, 1],
  ])("of a pattern of nine tiles with %i beads round it is in %i units", (count, units) => {
    const document = { ...patterned("p1"), beads: [{ along: { v: -1 }, diameter: 0.3, count }] };
    expect(symmetryOf(document)?.units ?? 1).toBe(units);
  });

  it.each([
    [32, 32],
    [64, 32],
    [66, 22],
    [37, 1],
    [129, 3],
  ])("of a bare band with %i beads round it is in %i units, mirrored", (count, units) => {
    const document = { ...band, beads: [{ along: { v: 0 }, diameter: 0.3, count }] };
    expect(symmetryOf(document)).toMatchObject({ units, mirrored: true });
  });

  it("of a band alone is not asked", () => {
    expect(symmetryOf(band)).toBeUndefined();
  });

  it("begins a unit where fewest beads are cut", () => {
    const document = { ...patterned("p1"), beads: [{ along: { path: "M 0.1 -0.3 H 0.5" }, diameter: 0.3 }] };
    const { parts } = bodiesOf(document);
    const cut = (angle: number) =>
      parts.spheres.filter(({ centre: [x, y], radius }) => {
        const away = Math.abs(y * Math.cos(angle) - x * Math.sin(angle));
        return away < radius && x * Math.cos(angle) + y * Math.sin(angle) > 0;
      }).length;
    expect(cut(parts.symmetry?.sectors[0].from as number)).toBe(0);
  });

  it("is asked anew of a body that was its own image about another axis", () => {
    const path = "M 0.2 -0.1 H 0.8 V 0.1 H 0.2 Z";
    const stopped = { fit: { repeats: REPEATS, hold: "band" }, cover: 40, regions: [{ path, height: 0.4 }] };
    const { pattern, wrap } = bodiesOf({ ...band, pattern: stopped });
    const us = pattern.bodies[0].outline.flat(2).map(([u]) => u);
    const axis = (Math.min(...us) + Math.max(...us)) / 2;
    const memory = new Memory();
    const imagesAbout = (place: number) =>
      bodyImages(pattern.bodies, {
        motion: { ...STAY, u: 2 * place, mirrored: true },
        round: wrap.round,
        same: TOLERANCE,
        remember: memory.begin(() => 0),
      });
    expect(imagesAbout(axis)).toEqual([0]);
    expect(imagesAbout(axis + 0.1)).toBeUndefined();
    expect(imagesAbout(axis)).toEqual([0]);
  });
});
