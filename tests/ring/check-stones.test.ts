// Covers: src/judge/castability/measure-stones.ts, src/judge/castability/measure-stone-walls.ts, src/judge/castability/measure-stone-sizes.ts, src/judge/castability/on-hollows.ts, src/stones/girdle-gaps.ts
import { describe, expect, test } from "vitest";
import type { RuleName } from "../../src/design/rules/rule-set.js";
import { STONE_RULES } from "../../src/design/rules/rule-set.js";
import { openRing } from "../../src/ring/open-ring.js";
import { FLAT_BAND } from "../support/set-stones.js";

/** Room between a stone and its hollow, mm; how far a closed hollow ends below the culet. */
const ROOM = 0.05;
const BELOW = 0.1;

/** A draft's facets lie off what they stand for by so much, mm, on either side of a wall. */
const OFF = 0.05;

/** Radius of the finished outside of the band, mm. */
const OUTSIDE = 54 / (2 * Math.PI) + 2.4;

/** Depth of a round stone from its table at the usual proportions, share of its width (crown 15.1, girdle 3, pavilion 43.1 %). */
const DEPTH = 0.612;

const ring = (stone: object) => openRing({ ...FLAT_BAND, stones: [stone] });

/** Judges a ring with one limit, and tells what was found; the solid is made once. */
function judging(stone: object, rule: RuleName) {
  const opened = ring(stone);
  return async (limit: number) => {
    const document = { ...FLAT_BAND, stones: [stone], rules: { limits: { [rule]: limit } } };
    const { results, findings } = await opened.change(document).check({ detail: "draft" });
    return { result: results.find((one) => one.rule === rule), found: findings.find((one) => one.rule === rule) };
  };
}

const at = (angle: number, v = 0) => ({ form: "single", angle, v });
const row = (count: number, from: number, to: number) => ({ form: "row", count, over: { from, to } });

/** Between the middles of two girdles' upper edges so far apart round the finger, both so deep under the surface, mm. */
const apart = (degrees: number, crown: number) => 2 * (OUTSIDE - crown) * Math.sin((degrees * Math.PI) / 360);

describe("stones are measured as they are set, and judged where they stand", () => {
  test.each<[RuleName, object, number, number, { angle: number; v: number }]>([
    // Two girdles of 1.2 mm, 9° apart, lean towards each other below: their lower edges are nearer by the girdle's height.
    [
      "girdles",
      { size: 1.2, place: row(2, 85.5, 94.5), setting: { form: "flush" } },
      apart(9, 0.181 + 0.036) - 1.2,
      0.01,
      { angle: 90, v: 0 },
    ],
    [
      "web",
      { size: 1.2, place: row(2, 85.5, 94.5), setting: { form: "flush" } },
      apart(9, 0.217) - 1.2 - 2 * ROOM,
      OFF,
      { angle: 90, v: 0 },
    ],
    [
      "under",
      { size: 2, place: at(90), setting: { form: "flush" } },
      2.4 - DEPTH * 2 - BELOW,
      OFF,
      { angle: 90, v: 0 },
    ],
    [
      "beside",
      { size: 1.5, place: at(30, 1.3), setting: { form: "flush" } },
      2.5 - 1.3 - 0.75 - ROOM,
      OFF,
      { angle: 30, v: 2.3 },
    ],
    [
      "beside",
      { size: 1.5, level: 0.4, place: at(30), setting: { form: "channel", rise: 0.4, wall: 0.5 } },
      0.5 - 0.06 * 1.5 - ROOM,
      OFF,
      { angle: 30, v: 0.9 },
    ],
    ["bezel", { size: 2, place: at(200), setting: { form: "bezel", wall: 0.45 } }, 0.45, OFF, { angle: 200, v: 0.9 }],
    ["ledge", { size: 1, place: at(90), setting: { form: "flush", pilot: 0.6 } }, 0.2, 1e-6, { angle: 90, v: 0 }],
    ["prong", { size: 2, place: at(90), setting: { form: "prongs", diameter: 0.45 } }, 0.45, 1e-6, { angle: 90, v: 0 }],
    ["grain", { size: 1.6, place: at(90), setting: { form: "bead-set", grain: 0.2 } }, 0.32, 1e-6, { angle: 90, v: 0 }],
    ["level", { size: 1.6, level: -0.15, place: at(90), setting: { form: "flush" } }, 0.15, 1e-6, { angle: 90, v: 0 }],
  ])("%s", async (rule, stone, expected, off, place) => {
    const judged = judging(stone, rule);
    const { result } = await judged(0.001);
    const figure = result?.figure ?? Number.NaN;
    expect(Math.abs(figure - expected)).toBeLessThanOrEqual(off);
    const keeps = rule === "level" ? 1 : -1;
    // The same design just keeps a limit that is a little laxer than its figure, and just misses one that is a little stricter.
    expect((await judged(figure + keeps * 0.01)).result?.kept).toBe(true);
    const { found } = await judged(figure - keeps * 0.01);
    expect(found).toMatchObject({ rule, severity: "warning", source: "the design's own figure" });
    const [first] = found?.places ?? [];
    expect(Math.abs(first.angle - place.angle)).toBeLessThan(12);
    expect(Math.abs(Math.abs(first.v) - place.v)).toBeLessThan(1);
  });

  test("prongs and grains that hold a stone, those it shares with others among them", async () => {
    const single = { size: 2, place: at(90), setting: { form: "prongs", count: 3 } };
    const judged = judging(single, "held");
    expect((await judged(3)).result).toMatchObject({ figure: 3, kept: true });
    expect((await judged(4)).result).toMatchObject({ figure: 3, kept: false });
    const shared = { size: 1.5, place: row(4, 70, 96), setting: { form: "bead-set" } };
    expect((await judging(shared, "held")(4)).result).toMatchObject({ figure: 4, kept: true });
  });

  test("gems that do not bear flush setting, by name", async () => {
    const flush = (gem: string) => ({ size: 1.5, gem, place: at(90), setting: { form: "flush" } });
    for (const gem of ["emerald", "opal", "moonstone"]) {
      const { result, found } = await judgedBySet(flush(gem));
      expect(result).toMatchObject({ figure: 1, kept: false });
      expect(found?.message).toContain(gem.slice(1));
    }
    expect((await judgedBySet(flush("sapphire"))).result).toMatchObject({ figure: 0, kept: true });
    const held = { ...flush("emerald"), setting: { form: "bezel" } };
    expect((await judgedBySet(held)).result).toMatchObject({ figure: null, kept: true });
  });

  test("a ring without stones is told nothing of them", async () => {
    const { results } = await openRing(FLAT_BAND).check({ detail: "draft" });
    expect(results.some(({ rule }) => STONE_RULES.some((one) => one === rule))).toBe(false);
  });
});

/** As the default set judges gems. */
async function judgedBySet(stone: object) {
  const result = await ring(stone).check({ detail: "draft" });
  return {
    result: result.results.find(({ rule }) => rule === "unfit"),
    found: result.findings.find(({ rule }) => rule === "unfit"),
  };
}
