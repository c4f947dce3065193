// Covers: src/marks/clear-of-filling.ts, src/design/run-rules.ts
/** Plain zones filled up to the rails: held against hand formulas, looked at in the mesh, and refused where they cannot be. */
import { build, flatTile, openRing, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { openInside } from "../../src/ring/open-ring.js";
import { failureOf } from "../support/failure-of.js";
import { fontFiles } from "../support/fonts.js";

type Fields = Readonly<Record<string, unknown>>;

const CHANNEL = { form: "channel", rail: 0.8, depth: 0.6, edge: 0 };
const LOZENGE = { name: "lozenge", path: "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z", height: 0.4 };
const TOLERANCE = 0.02;

const design = (pattern: Fields = {}, own: Fields = {}, outside: Fields = CHANNEL) => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: TOLERANCE,
  profile: { width: 6, thickness: 2, bore: { form: "flat" }, outside },
  pattern: { fit: { repeats: 9, hold: "band" }, cover: 240, regions: [LOZENGE], plain: "filled", ...pattern },
  ...own,
});

const withoutFilling = (document: ReturnType<typeof design>) => ({
  ...document,
  pattern: { ...document.pattern, plain: "open" },
});

/** Radii of all vertices within so many degrees of the back and so near to the middle, of those outside a radius, mm. */
function radiiAtBack(positions: Float64Array, { degrees, w, beyond }: { degrees: number; w: number; beyond: number }) {
  const found: number[] = [];
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, z] = positions.subarray(i, i + 3);
    const radius = Math.hypot(x, y);
    const away = Math.abs((Math.atan2(y, x) * 180) / Math.PI + 90);
    if (away <= degrees && Math.abs(z) <= w && radius > beyond) found.push(radius);
  }
  return found;
}

describe("what is filled", () => {
  it.each([
    [240, 0],
    [180, 0.2],
  ])("has the volume of a turned rectangle, by hand: cover %i°, edges of %f mm", async (cover, edge) => {
    const document = design({ cover, regions: [] }, {}, { ...CHANNEL, edge });
    const [filled, open] = [await build(document), await build(withoutFilling(document))];
    const R = 8.5 + 2;
    const [floor, top] = [R - 0.6, R];
    // The lap of 0.02 mm at either end is measured on the floor.
    const angle = ((360 - cover) * Math.PI) / 180 + 0.04 / floor;
    const rectangle = ((6 - 2 * 0.8) * (top ** 2 - floor ** 2)) / 2;
    // Over each rounded edge what lies between the arc and the top: by strips of a hundredth.
    let edges = 0;
    for (let i = 0; i < 100; i++) {
      const x = ((i + 0.5) / 100) * edge;
      const arc = R - edge + Math.sqrt(edge ** 2 - (edge - x) ** 2);
      edges += (Math.max(0, top ** 2 - arc ** 2) / 2) * (edge / 100) * 2;
    }
    const expected = angle * (rectangle + edges);
    // Chords of two bodies stand off by a tolerance at most.
    expect(Math.abs((filled.report.volume - open.report.volume) / expected - 1)).toBeLessThan(2e-2);
    expect(filled.report).toMatchObject({ closed: true, components: 1, genus: 1, headroom: open.report.headroom });
  });

  it("is level across whatever the floor is: all of it is flush with the rails", async () => {
    const { mesh } = await build(design({ regions: [] }, {}, { ...CHANNEL, crown: 0.3, root: 0.2, edge: 0.15 }));
    const radii = radiiAtBack(mesh.positions, { degrees: 50, w: 2, beyond: 9 });
    expect(radii.length).toBeGreaterThan(100);
    for (const radius of radii) expect(Math.abs(radius - 10.5)).toBeLessThan(2e-3);
    // And no farther: beside the ends the floor lies open, its crown 0.3 below the rails.
    const { mesh: wide } = await build(design({ regions: [] }));
    expect(Math.max(...radiiAtBack(wide.positions, { degrees: 180, w: 1, beyond: 9 }))).toBeLessThan(10.501);
    const beyondEnds = radiiAtBack(wide.positions, { degrees: 180, w: 2, beyond: 9.91 });
    expect(beyondEnds.length).toBe(radiiAtBack(wide.positions, { degrees: 60.5, w: 2, beyond: 9.91 }).length);
  });

  it.each([
    [
      "of art without symmetry",
      design({ symmetry: "p1", regions: [{ ...LOZENGE, path: "M 0 -0.4 L 0.9 0.3 L 0.3 0.4 Z" }] }),
    ],
    [
      "of relief that is cut off at its ends, and of lines",
      design({ ends: { form: "line", width: 0.8, height: 0.5 } }),
    ],
    [
      "of holes and what is sunk",
      design({
        regions: [
          { ...LOZENGE, height: undefined, mode: "pierced" },
          { path: LOZENGE.path, mode: "sunk", depth: 0.2 },
        ],
      }),
    ],
    [
      "of two lanes, one with ornaments at its ends",
      design({
        fit: { hold: "band" },
        regions: [],
        lanes: [
          { fit: { repeats: 12 }, regions: [LOZENGE] },
          { fit: { repeats: 9 }, regions: [LOZENGE], ends: { form: "ornament", regions: [LOZENGE] } },
        ],
      }),
    ],
    ["whose pattern fades", design({ ends: { form: "fade", length: 3 } })],
  ])("stands beside the ends %s", async (_, document) => {
    const { report } = await build(document);
    expect(report).toMatchObject({ closed: true, components: 1 });
    expect(report.headroom).toBe((await build(withoutFilling(document))).report.headroom);
  });

  it("is not drawn on the tiles, which it laps at the ends", async () => {
    const { regions } = await flatTile(design(), { tiles: 9 });
    expect(regions.map(({ names }) => names)).toEqual([["lozenge"]]);
  });

  it("begins beyond the ornaments", async () => {
    const ends = { form: "ornament", tiles: 1, regions: [LOZENGE] };
    const { answers } = await openInside(design({ ends }), {}).ask(["pattern", "fit"]);
    const { fit, pattern } = answers;
    const filling = pattern.bodies.find((body) => body.filling);
    const tile = fit?.tileWidth ?? Number.NaN;
    const along = filling?.outline.flat(2).map(([u]) => u) ?? [];
    expect(Math.min(...along)).toBeCloseTo(10 * tile - 0.02, 9);
    expect(Math.max(...along)).toBeCloseTo(13.5 * tile - tile + 0.02, 9);
  });

  it("goes up with the rails, and not with the relief, before it is finished", async () => {
    const casting = { finishing: { bore: 0.05, rails: 0.08, relief: 0.02 } };
    const ring = openRing(design({ regions: [LOZENGE] }, { casting }));
    const { positions } = await ring.solid({ piece: "cast" });
    const radii = radiiAtBack(positions, { degrees: 50, w: 2, beyond: 9 });
    for (const radius of radii) expect(Math.abs(radius - 10.58)).toBeLessThan(2e-3);
  });
});

it("is missed by the proof where a ring lacks it, or has it without being asked", async () => {
  const asked = design({}, {}, { ...CHANNEL, edge: 0.15 });
  const laid = async (document: object) => (await openInside(document, {}).ask(["prove", "solid", "measure"])).answers;
  const [filled, open] = [await laid(asked), await laid(withoutFilling(asked))];
  const proofs = (made: typeof open, drawn: typeof open) => drawn.prove(made.solid, made.measure, { units: 1 });
  expect([proofs(filled, filled).agrees, proofs(open, open).agrees]).toEqual([true, true]);
  expect([proofs(open, filled).agrees, proofs(filled, open).agrees]).toEqual([false, false]);
});

describe("on a band that tapers", () => {
  const BACK = { width: 4.6, thickness: 1.7 };
  const tapered = (pattern: Fields = {}, taper: Fields = BACK, outside: Fields = CHANNEL) => {
    const document = design({ regions: [{ ...LOZENGE, height: 0.3 }], ...pattern }, {}, outside);
    return { ...document, profile: { ...document.profile, taper } };
  };
  /** By hand: from the top to the back a size goes by the smooth step. */
  const sizeAt = (angle: number, top: number, back: number) => {
    const t = Math.abs(((angle - Math.PI / 2 + 3 * Math.PI) % (2 * Math.PI)) - Math.PI) / Math.PI;
    return top + (back - top) * (3 * t * t - 2 * t ** 3);
  };

  it.each([
    ["whose tiles narrow", { fit: { repeats: 9, hold: "band" } }],
    ["whose tiles keep their size", { fit: { repeats: 9, hold: "band", taper: "keep" } }],
  ])("%s, has the volume of the channel's section taken round the back, by hand", async (_, fit) => {
    const document = tapered(fit);
    const [filled, open] = [await build(document), await build(withoutFilling(document))];
    let expected = 0;
    const steps = 400;
    // The lap of 0.02 mm at either end.
    const [from, to] = [(-150 * Math.PI) / 180 - 0.0021, (-30 * Math.PI) / 180 + 0.0021];
    for (let i = 0; i < steps; i++) {
      const angle = from + ((to - from) * (i + 0.5)) / steps;
      const rail = 8.5 + sizeAt(angle, 2, BACK.thickness);
      const across = sizeAt(angle, 6, BACK.width) - 2 * CHANNEL.rail;
      expected += ((to - from) / steps) * across * ((rail ** 2 - (rail - CHANNEL.depth) ** 2) / 2);
    }
    expect(Math.abs((filled.report.volume - open.report.volume) / expected - 1)).toBeLessThan(2e-2);
    expect(filled.report).toMatchObject({ closed: true, components: 1, genus: 1, headroom: open.report.headroom });
  });

  it("follows the rails: all of its top is flush with theirs, by hand, whatever the floor is", async () => {
    const outside = { ...CHANNEL, crown: 0.25, root: 0.2, edge: 0.15 };
    for (const pattern of [{}, { fit: { repeats: 9, hold: "band", taper: "keep" } }]) {
      const { mesh } = await build(tapered({ ...pattern, regions: [] }, BACK, outside));
      const { positions } = mesh;
      let seen = 0;
      for (let i = 0; i < positions.length; i += 3) {
        const [x, y, z] = positions.subarray(i, i + 3);
        const [angle, radius] = [Math.atan2(y, x), Math.hypot(x, y)];
        if (Math.abs(angle + Math.PI / 2) > 0.9 || Math.abs(z) > 1.3 || radius < 9) continue;
        expect(Math.abs(radius - (8.5 + sizeAt(angle, 2, BACK.thickness)))).toBeLessThan(4e-3);
        seen++;
      }
      expect(seen).toBeGreaterThan(100);
    }
  });

  it.each([
    ["both mirrors, by a quarter", tapered(), "mirror", 4],
    [
      "the one mirror where the taper leans to one side, by a half",
      tapered(
        {},
        {
          width: 4.6,
          between: [
            { angle: 0, width: 5.8 },
            { angle: 180, width: 5.2 },
          ],
        },
        { ...CHANNEL, crown: 0.2 },
      ),
      "mirror",
      2,
    ],
    [
      "none where the art has none either",
      tapered({ symmetry: "p1", regions: [{ path: "M 0.2 -0.1 L 0.5 0.3 L 0.8 0 Z", height: 0.3 }] }, BACK),
      "whole",
      1,
    ],
  ])("keeps %s", async (_, document, road, images) => {
    const { answers } = await openInside(document, {}).ask(["union", "parts"]);
    expect(answers.union.road).toBe(road);
    const { sectors } = answers.parts.symmetry ?? { sectors: [{ from: 0, to: 2 * Math.PI }] };
    const [{ from, to, upper = false }] = sectors as readonly { from: number; to: number; upper?: boolean }[];
    expect(Math.round((2 * Math.PI) / (to - from)) * (upper ? 2 : 1)).toBe(images);
  });
});

it("is half of itself turned over beside art that only half turns keep", async () => {
  const regions = [{ path: "M 0 -0.4 L 0.9 0.3 L 0.3 0.4 Z", height: 0.3 }];
  const document = design({ symmetry: "p2", regions, fit: { repeats: 14, hold: "band" } });
  const [filled, open] = [await build(document), await build(withoutFilling(document))];
  const [floor, top] = [10.5 - 0.6, 10.5];
  const expected = ((2 * Math.PI) / 3 + 0.04 / floor) * (((6 - 2 * 0.8) * (top ** 2 - floor ** 2)) / 2);
  expect(Math.abs((filled.report.volume - open.report.volume) / expected - 1)).toBeLessThan(2e-2);
});

describe("what cannot be filled", () => {
  it.each([
    ["a band without rails", design({}, {}, { form: "domed", rise: 0.3 })],
    ["a floor as high as the rails", design({ regions: [] }, {}, { ...CHANNEL, crown: 0.6 })],
    [
      "nothing, where ornaments fill the plain zone",
      design({ cover: 240, fit: { repeats: 4, hold: "band" }, ends: { form: "ornament", regions: [LOZENGE] } }),
    ],
  ])("%s", async (_, document) => {
    await expect(build(document)).rejects.toMatchObject({ code: "cannot-fill", path: "pattern.plain" });
  });

  it("a pattern all the way round, nor what drowns in it", () => {
    const problems = (pattern: Fields, own: Fields = {}) =>
      failureOf(() => readDesign(design(pattern, own))).problems.map(({ code, path }) => `${code} ${path}`);
    expect(problems({ cover: 360 })).toEqual(["value-invalid pattern.plain"]);
    const beads = [
      { along: "rail", diameter: 0.4 },
      { along: "seat-edge", diameter: 0.4 },
      { along: { v: 0 }, diameter: 0.4 },
      { along: { path: "M 0 0 H 1" }, diameter: 0.4 },
    ];
    expect(problems({}, { beads })).toEqual(["value-invalid beads[1].along", "value-invalid beads[2].along"]);
    expect(() => readDesign(design({ plain: "open" }, { beads }))).not.toThrow();
  });

  it("marks on the seat in the plain zone are refused, and let stand beside it", async () => {
    const text = (angle: number, own: Fields = {}) =>
      design({ regions: [] }, { lettering: [{ text: "ebb", at: "seat", angle, height: 1.5, depth: 0.2, ...own }] });
    const refused = { code: "mark-in-filling", path: "lettering[0]" };
    for (const angle of [270, 211, 329])
      await expect(build(text(angle), { files: fontFiles })).rejects.toMatchObject(refused);
    for (const document of [text(90), text(270, { at: "bore" })]) {
      expect((await build(document, { files: fontFiles })).report.closed).toBe(true);
    }
    const hallmark = { at: "seat", angle: 250, width: 1.5, height: 1 };
    await expect(build(design({ regions: [] }, { hallmark }))).rejects.toMatchObject({
      code: "mark-in-filling",
      path: "hallmark",
    });
  });
});
