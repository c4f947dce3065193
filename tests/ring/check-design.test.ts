// Covers: src/judge/castability/*, src/judge/details/unrolled-band.ts
// Covers: src/relief/tile-outlines.ts
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import type { RuleName } from "../../src/design/rules/rule-set.js";
import { draftRays } from "../../src/judge/castability/rays.js";
import { checkDesign } from "../../src/ring/check-design.js";
import { fontFiles, nameOf } from "../support/fonts.js";

/** What is promised of walls, mm, and where the search for a narrow place stops. */
const WALL = 0.01;
const CLOSE = 0.005;

/** The same of drafts: a chord's tolerance on both sides. */
const DRAFT_WALL = 0.1;

const channel = (over: object = {}) => ({
  annulet: 1,
  size: { diameter: 17.5 },
  profile: {
    width: 7,
    thickness: 1.9,
    bore: { form: "flat", edge: 0.2 },
    outside: { form: "channel", rail: 0.9, depth: 0.6, edge: 0.1, ...over },
  },
});

/** Rectangles of the tile in mm, x from the tile's left border, y from the middle line. */
const rectangle = (x: number, y: number, width: number, height: number) =>
  `M ${x} ${y} h ${width} v ${height} h ${-width} Z`;

const patterned = (regions: readonly object[], rest: object = {}) => ({
  ...channel(),
  pattern: { fit: { hold: "band", repeats: 10 }, regions: regions.map((one) => ({ unit: "mm", height: 0.4, ...one })) },
  ...rest,
});

async function check(document: object, rules?: string) {
  const result = await checkDesign(document, { rules });
  const figure = (rule: RuleName) => result.results.find((one) => one.rule === rule)?.figure ?? null;
  const finding = (rule: RuleName) => result.findings.find((one) => one.rule === rule);
  return { ...result, figure, finding };
}

describe("on the solid", () => {
  it("the metal over the bore is thickness less depth at a channel's floor", async () => {
    const { figure, finding, findings } = await check(channel());
    expect(Math.abs((figure("shank") as number) - 1.3)).toBeLessThan(WALL);
    expect(finding("shank")).toBeUndefined();
    expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
  });

  it("of a draft is found with rays that its units share, and with all of them where one letter spoils their likeness", async () => {
    expect([1, 2, 4, 9].map(draftRays)).toEqual([12_000, 6_000, 3_000, 3_000]);
    const art = {
      pattern: { regions: [{ unit: "mm", height: 0.3, path: rectangle(1, -1, 1, 2) }], fit: { repeats: 10 } },
    };
    const figureOf = async (rest: object) => {
      const document = { ...channel(), ...art, ...rest, tolerance: 0.05 };
      const { results } = await checkDesign(document, { detail: "draft", files: fontFiles });
      return results.find(({ rule }) => rule === "shank")?.figure as number;
    };
    expect(Math.abs((await figureOf({})) - 1.3)).toBeLessThan(DRAFT_WALL);
    // At one place of the ring alone: the strokes of one letter.
    const lettering = [{ text: "I", at: "bore", height: 2, depth: 0.6, font: nameOf("nunito") }];
    expect(Math.abs((await figureOf({ lettering })) - 0.7)).toBeLessThan(DRAFT_WALL);
  });

  it("a thin shank is an error with its figure, its limit and its place on the floor", async () => {
    const { finding } = await check(channel({ depth: 1.5 }));
    const shank = finding("shank");
    expect(shank).toMatchObject({ severity: "error", limit: 0.5, unit: "mm" });
    expect(Math.abs((shank?.figure as number) - 0.4)).toBeLessThan(WALL);
    expect(shank?.source).toContain("morrisandwatson.com");
    for (const { v, point } of shank?.places ?? []) {
      expect(Math.abs(v)).toBeLessThan(2.61);
      expect(Math.hypot(point?.[0] ?? 0, point?.[1] ?? 0)).toBeCloseTo(8.95, 1);
    }
  });

  it("a thin rail is a wall beside the seat", async () => {
    const { figure, finding } = await check(channel({ rail: 0.3 }));
    expect(Math.abs((figure("wall") as number) - 0.3)).toBeLessThan(WALL);
    const [place] = finding("wall")?.places ?? [];
    expect(Math.abs(place.v)).toBeGreaterThan(3);
  });

  it("beads on the rails and lines on the seat are no walls", async () => {
    const beads = [{ along: "rail", diameter: 0.35 }];
    const { figure } = await check(patterned([{ path: rectangle(1, -1, 0.3, 2) }], { beads }));
    expect(figure("wall")).toBeGreaterThan(0.85);
    expect(figure("bead")).toBeCloseTo(0.35, 9);
    expect(Math.abs((figure("line") as number) - 0.3)).toBeLessThan(CLOSE);
  });

  it("what is sunk leaves less metal over the bore", async () => {
    const { figure } = await check(
      patterned([{ path: rectangle(1, -1, 1.5, 2), mode: "sunk", depth: 0.7, height: undefined }]),
    );
    expect(Math.abs((figure("shank") as number) - 0.6)).toBeLessThan(WALL);
  });

  it("inner corners are a note with their radius on the band, the feet of relief left out", async () => {
    const sharp = (await check(channel())).finding("corner");
    expect(sharp).toMatchObject({ severity: "note", figure: 0 });
    // Half of 7 less 0.9 from the middle, on the floor.
    expect(Math.abs(Math.abs(sharp?.places[0].point?.[2] ?? 0) - 2.6)).toBeLessThan(1e-9);
    expect((await check(channel({ root: 0.1 }))).figure("corner")).toBeCloseTo(0.1, 9);
    const round = await check(patterned([{ path: rectangle(1, -1, 1, 2) }], channel({ root: 0.25 })));
    expect(round.finding("corner")).toBeUndefined();
    expect(round.results.find(({ rule }) => rule === "corner")?.without).toContain("feet of relief");
  });

  it("outer edges are told by their radius", async () => {
    expect((await check(channel({ edge: 0.1 }))).finding("edge")).toMatchObject({ figure: 0.1, limit: 0.125 });
    expect((await check(channel({ edge: 0 }))).figure("edge")).toBe(0);
    expect((await check(channel({ edge: 0.2 }))).finding("edge")).toBeUndefined();
  });

  it("a D section's thin sides are found that walls by rays pass over", async () => {
    const dome = (rise: number) => ({
      ...channel(),
      profile: {
        width: 7,
        thickness: 1.8,
        bore: { form: "flat", edge: 0 },
        outside: { form: "domed", rise, edge: 0 },
      },
    });
    const { figure, finding } = await check(dome(1.6));
    // The circle through the sides' tops, 0.2 over the bore, and the crown: r(3.4) on it.
    const radius = (3.5 ** 2 + 1.6 ** 2) / (2 * 1.6);
    const side = 1.8 - radius + Math.sqrt(radius ** 2 - 3.4 ** 2);
    expect(figure("wall")).toBeGreaterThan(0.8);
    expect(Math.abs((figure("side") as number) - side)).toBeLessThan(0.01);
    expect(finding("side")).toMatchObject({ severity: "warning", limit: 0.4 });
    expect((await check(dome(0.8))).finding("side")).toBeUndefined();
  });

  it("a band is as heavy as the largest ball in it", async () => {
    const thick = (thickness: number) => ({
      ...channel(),
      profile: { width: 7, thickness, bore: { form: "flat", edge: 0.2 }, outside: { form: "flat", edge: 0.2 } },
    });
    expect((await check(thick(4.6))).finding("heavy")).toMatchObject({ limit: 4, severity: "note" });
    expect((await check(thick(4.6))).figure("heavy")).toBeCloseTo(4.6, 6);
    expect((await check(thick(3.5))).finding("heavy")).toBeUndefined();
  });

  it("beads that bridge a gap are a finding with their angles, and no warning beside it", async () => {
    const inChannel = (bead: object) => ({
      ...channel(),
      profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 2.7, depth: 0.8, edge: 0 } },
      beads: [{ along: { v: 0 }, count: 3, ...bead }],
      proud: true,
    });
    const { finding, warnings } = await check(inChannel({ diameter: 0.8, height: 0.8 }));
    const { figure, places } = finding("bridge") ?? { figure: 0, places: [] };
    expect(figure).toBe(3);
    expect(places.map(({ angle }) => Math.round(angle)).sort((a, b) => a - b)).toEqual([30, 150, 270]);
    expect(warnings.map(({ code }) => code)).not.toContain("genus-differs");
    expect((await check(inChannel({ diameter: 0.4 }))).finding("bridge")).toBeUndefined();
  });
});

describe("on the flat art", () => {
  const two = [{ path: rectangle(1, -1, 1, 2) }, { path: rectangle(2.13, -1, 1, 2) }];

  it("the narrowest gap is told with its angle and its place across", async () => {
    const { figure, finding } = await check(patterned(two));
    expect(Math.abs((figure("gap") as number) - 0.13)).toBeLessThan(CLOSE);
    const [{ angle, v }] = finding("gap")?.places ?? [];
    // The pattern begins at 270°; the gap's middle is 2.065 mm along the floor, of 10.05 mm radius.
    expect(angle).toBeCloseTo(270 + (2.065 / 10.05) * (180 / Math.PI), 1);
    expect(v).toBeCloseTo(0, 1);
  });

  it("a gap beside a rail counts, and none where no rail stands", async () => {
    const near = [{ path: rectangle(1, 1.2, 2, 1.25) }];
    const { figure } = await check(patterned(near));
    expect(Math.abs((figure("gap") as number) - 0.15)).toBeLessThan(CLOSE);
    const flat = { width: 5.2, thickness: 1.9, outside: { form: "flat", edge: 0 } };
    expect((await check(patterned(near, { profile: flat }))).figure("gap")).toBeNull();
  });

  it("the smallest island is told by the circle of its area", async () => {
    const { figure, finding } = await check(patterned([...two, { path: rectangle(4, 0, 0.3, 0.3) }]));
    const across = 2 * Math.sqrt(0.09 / Math.PI);
    expect(figure("island")).toBeCloseTo(across, 3);
    expect(finding("island")).toMatchObject({ severity: "warning", limit: 0.4 });
  });

  it("a sunk line is told by its width, and by its depth over it", async () => {
    const sunk = { path: rectangle(1, -1, 0.15, 2), mode: "sunk", depth: 0.45, height: undefined };
    const { figure, finding } = await check(patterned([sunk]));
    expect(Math.abs((figure("groove") as number) - 0.15)).toBeLessThan(CLOSE);
    expect(Math.abs((figure("groove-depth") as number) - 3)).toBeLessThan(0.15);
    expect(finding("groove-depth")).toMatchObject({ limit: 1, unit: "×" });
    expect(finding("groove-depth")?.source).toContain("morrisandwatson.com");
  });

  it("a hole is told where it is narrowest, at the bore, and by the way through it", async () => {
    const hole = (width: number) => ({ path: rectangle(1, -1, width, 1.6), mode: "pierced", height: undefined });
    // On the floor, of 10.05 mm radius, 0.22 wide; through 1.3 mm to the bore, of 8.75.
    const { figure, finding } = await check(patterned([hole(0.22)]));
    const atBore = (0.22 * 8.75) / 10.05;
    expect(Math.abs((figure("hole") as number) - atBore)).toBeLessThan(CLOSE);
    expect(finding("hole")).toMatchObject({ limit: 0.2 });
    expect(Math.abs((figure("hole-depth") as number) - 1.3 / atBore)).toBeLessThan(0.1);
    const wide = await check(patterned([hole(1.55)]));
    expect(wide.finding("hole")).toBeUndefined();
    expect(wide.finding("hole-depth")).toBeUndefined();
  });

  it("a hole with broken edges is told by the throat between them", async () => {
    const broken = { path: rectangle(1, -1, 0.5, 1.6), mode: "pierced", broken: 0.1, height: undefined };
    const limits = { rules: { limits: { hole: 0.6 } } };
    const { figure } = await check(patterned([broken], limits));
    expect(Math.abs((figure("hole") as number) - (0.5 * 8.75) / 10.05)).toBeLessThan(CLOSE);
  });

  it("relief that finishing may take, and shallow engraving, are told by their height", async () => {
    const sunk = (depth: number) => ({ path: rectangle(3, -1, 1, 2), mode: "sunk", depth, height: undefined });
    const low = await check(patterned([{ path: rectangle(1, -1, 1, 2), height: 0.1 }, sunk(0.12)]));
    expect(low.finding("relief")).toMatchObject({ figure: 0.1, limit: 0.15 });
    expect(low.finding("engraving")).toMatchObject({ figure: 0.12, limit: 0.15 });
    const high = await check(patterned([{ path: rectangle(1, -1, 1, 2) }, sunk(0.3)]));
    expect(high.finding("relief") ?? high.finding("engraving")).toBeUndefined();
  });

  it("a post is told by its height over its diameter", async () => {
    const post = (height: number) => check(patterned([{ path: rectangle(2, 0, 0.45, 0.45), height }], { proud: true }));
    const { figure, finding } = await post(1.2);
    expect(figure("post")).toBeCloseTo(1.2 / (2 * Math.sqrt(0.45 ** 2 / Math.PI)), 2);
    expect(finding("post")?.message).toContain("2.4 times its width, 1.20 mm high and 0.51 mm across");
    expect((await post(0.4)).finding("post")).toBeUndefined();
  });

  it("is the same wherever round the ring the tile begins, and in p2mm's images", async () => {
    const shifted = two.map(({ path }) => ({ path: path.replace(/^M (\S+)/, (_, x) => `M ${Number(x) + 4.9}`) }));
    const moved = await check(patterned(shifted));
    expect(Math.abs((moved.figure("gap") as number) - 0.13)).toBeLessThan(CLOSE);
    const mirrored = patterned([{ path: rectangle(0.06, 0.4, 1, 1) }, { path: rectangle(1.3, 0.4, 0.9, 1) }]);
    const p2mm = { ...mirrored, pattern: { ...mirrored.pattern, symmetry: "p2mm" } };
    // The first stands 0.06 mm from the mirror, so 0.12 mm from its image.
    expect(Math.abs(((await check(p2mm)).figure("gap") as number) - 0.12)).toBeLessThan(CLOSE);
  });

  it("is empty on a plain band", async () => {
    const { results } = await check(channel());
    for (const rule of [
      "line",
      "gap",
      "island",
      "post",
      "groove",
      "groove-depth",
      "hole",
      "hole-depth",
      "bead",
      "marks",
    ]) {
      expect(results.find((one) => one.rule === rule)).toMatchObject({ figure: null, kept: true });
    }
  });
});

describe("the rules", () => {
  it("are the design's, or a set by name with its own limits above it", async () => {
    const thin = { ...channel({ rail: 0.7 }), rules: { limits: { shank: 1.35 } } };
    const own = await check(thin);
    expect(own.finding("shank")).toMatchObject({ limit: 1.35, source: "the design's own figure" });
    expect(own.finding("wall")).toBeUndefined();
    const strict = await check(thin, "conservative");
    expect(strict.rules.name).toBe("conservative");
    expect(strict.finding("wall")).toMatchObject({ limit: 0.8, severity: "error" });
    expect(strict.finding("shank")).toMatchObject({ limit: 1.35 });
  });

  it("come gravest first", async () => {
    const { findings } = await check(
      patterned([{ path: rectangle(1, -1, 0.1, 2) }], { rules: { limits: { shank: 2 } } }),
    );
    const gravity = findings.map(({ severity }) => ["error", "warning", "note"].indexOf(severity));
    expect(gravity).toEqual([...gravity].sort((a, b) => a - b));
    expect(new Set(gravity)).toEqual(new Set([0, 1, 2]));
  });

  it("that are not there are refused", async () => {
    const reason: unknown = await checkDesign(channel(), { rules: "sloppy" }).catch((error: unknown) => error);
    expect(reason).toBeInstanceOf(AnnuletError);
    expect(reason).toMatchObject({ code: "rules-unknown", value: "sloppy" });
  });
});

describe("lettering", () => {
  const inBore = (lettering: readonly object[], thickness = 1.6) => ({
    annulet: 1,
    tolerance: 0.03,
    size: { diameter: 17.5 },
    profile: { width: 6, thickness, bore: { form: "flat", edge: 0.2 }, outside: { form: "flat", edge: 0.2 } },
    lettering: lettering.map((one) => ({ at: "bore", ...one })),
  });
  const checkText = async (lettering: readonly object[], thickness?: number) => {
    const { results, findings } = await checkDesign(inBore(lettering, thickness), { files: fontFiles });
    const figure = (rule: RuleName) => results.find((one) => one.rule === rule)?.figure as number;
    return { figure, finding: (rule: RuleName) => findings.find((one) => one.rule === rule) };
  };

  it("is no wall: webs between sunk letters are left out, the metal beneath them is not", async () => {
    const { figure } = await checkText([{ text: "MARSH", depth: 0.4 }]);
    expect(Math.abs(figure("shank") - 1.2)).toBeLessThan(0.02);
    expect(figure("wall")).toBe(figure("shank"));
  });

  it("leaves metal over its floor also where that lies above the middle of the band", async () => {
    const { figure, finding } = await checkText([{ text: "MARSH", depth: 0.7 }], 1);
    expect(Math.abs(figure("shank") - 0.3)).toBeLessThan(0.02);
    expect(finding("shank")).toMatchObject({ severity: "error", limit: 0.5 });
    // Strokes of this face are about 0.3 mm wide at this size.
    expect(figure("groove-depth")).toBeGreaterThan(2);
    expect(finding("groove-depth")?.message).toContain('in the text "MARSH"');
  });

  it("that overlaps another text is told, and not where they stand apart", async () => {
    const two = (angle: number) => [
      { text: "MARSH", depth: 0.2 },
      { text: "REED", depth: 0.2, angle },
    ];
    const { finding } = await checkText(two(95));
    expect(finding("marks")).toMatchObject({ figure: 0, limit: 0.2 });
    expect(finding("marks")?.message).toContain('between the text "MARSH" and the text "REED": they overlap');
    expect((await checkText(two(270))).finding("marks")).toBeUndefined();
  });
});
