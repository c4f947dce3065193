// Covers: src/judge/castability/*, src/judge/details/unrolled-band.ts
// Covers: src/relief/tile-outlines.ts
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import type { RuleName } from "../../src/design/rules/rule-set.js";
import { checkDesign } from "../../src/ring/check-design.js";
import { fontFiles } from "../support/fonts.js";

/** What is promised of walls, mm, and where the search for a narrow place stops. */
const WALL = 0.01;
const CLOSE = 0.005;

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

  it("sharp inner corners are a note, with their length", async () => {
    const { finding } = await check(channel());
    // The floor's two corners: circles of 10.05 mm radius.
    const length = Number(/(\d+) mm of them/.exec(finding("corner")?.message ?? "")?.[1]);
    expect(Math.abs(length - 4 * Math.PI * 10.05)).toBeLessThan(1);
    expect(finding("corner")?.severity).toBe("note");
    expect((await check(channel({ root: 0.25 }))).finding("corner")).toBeUndefined();
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
    expect(finding("groove-depth")).toMatchObject({ limit: 2, unit: "×" });
  });

  it("a small hole is told", async () => {
    const hole = { path: rectangle(1, -1, 0.16, 0.8), mode: "pierced", height: undefined };
    expect(Math.abs(((await check(patterned([hole]))).figure("hole") as number) - 0.16)).toBeLessThan(CLOSE);
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
    for (const rule of ["line", "gap", "island", "groove", "groove-depth", "hole", "bead"]) {
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
    expect(findings.map(({ severity }) => severity)).toEqual(
      ["error", "error", "warning", "note"].slice(-findings.length),
    );
  });

  it("that are not there are refused", async () => {
    const reason: unknown = await checkDesign(channel(), { rules: "sloppy" }).catch((error: unknown) => error);
    expect(reason).toBeInstanceOf(AnnuletError);
    expect(reason).toMatchObject({ code: "rules-unknown", value: "sloppy" });
  });
});

describe("lettering", () => {
  it("is no wall: webs between sunk letters are left out, the metal beneath them is not", async () => {
    const document = {
      annulet: 1,
      tolerance: 0.03,
      size: { diameter: 17.5 },
      profile: { width: 6, thickness: 1.6, bore: { form: "flat", edge: 0.2 }, outside: { form: "flat", edge: 0.2 } },
      lettering: [{ text: "MARSH", at: "bore", depth: 0.4 }],
    };
    const { results } = await checkDesign(document, { files: fontFiles });
    const figure = (rule: RuleName) => results.find((one) => one.rule === rule)?.figure as number;
    expect(Math.abs(figure("shank") - 1.2)).toBeLessThan(0.02);
    expect(figure("wall")).toBe(figure("shank"));
  });
});
