/**
 * Castability: what was measured on a piece against a rule set.
 */

import type { BandSurface } from "../../band/surface/surface.js";
import { degrees, showLength } from "../../base/units.js";
import {
  RULE_NAMES,
  RULES,
  type RuleName,
  type RuleSet,
  STONE_RULES,
  type StoneRule,
} from "../../design/rules/rule-set.js";
import type { Finding, FindingPlace, RuleResult } from "../finding.js";
import { measureArt } from "./measure-art.js";
import { measureBridges } from "./measure-bridges.js";
import { measureHeights } from "./measure-heights.js";
import { measureHoles } from "./measure-holes.js";
import { measureMarks } from "./measure-marks.js";
import { measureSection } from "./measure-section.js";
import { measureSolid, solidRays } from "./measure-solid.js";
import { measureStones } from "./measure-stones.js";
import { measureUndercut } from "./measure-undercut.js";
import { type JudgedPiece, type Measured, type Place, worst } from "./piece.js";

export interface Judgement {
  /** Every rule with its figure, kept or not. */
  readonly results: readonly RuleResult[];
  /** Limits that are not kept, the gravest first. */
  readonly findings: readonly Finding[];
}

const GRAVITY = { error: 0, warning: 1, note: 2 } as const;

/** Figures this near to a limit keep it, in the rule's unit: the search for the narrowest place stops there. */
const CLOSE = 2e-3;

export function judge(piece: JudgedPiece, { limits }: RuleSet): Judgement {
  const limitOf = (rule: RuleName) => limits[rule].limit;
  const measures = measureAll(piece, limitOf);
  const results: RuleResult[] = [];
  const findings: Finding[] = [];
  const asked = piece.stones.stones.length > 0 ? RULE_NAMES : RULE_NAMES.filter((rule) => !isStoneRule(rule));
  for (const rule of asked) {
    const { what, unit, keep, without } = RULES[rule];
    const { limit, severity, source } = limits[rule];
    const found = measures[rule];
    const kept =
      found === undefined || (keep === "at least" ? found.figure >= limit - CLOSE : found.figure <= limit + CLOSE);
    results.push({ rule, what, figure: found?.figure ?? null, limit, unit, severity, source, kept, without });
    if (kept) continue;
    const places = found.places.map((place) => placeOf(place, piece.wrap));
    findings.push({
      rule,
      severity,
      figure: found.figure,
      limit,
      unit,
      source,
      places,
      message: inWords(rule, limit, found),
    });
  }
  return { results, findings: findings.sort((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]) };
}

const isStoneRule = (rule: RuleName) => STONE_RULES.some((one) => one === rule);

const NO_STONES = Object.fromEntries(STONE_RULES.map((rule) => [rule, undefined])) as Record<StoneRule, undefined>;

/** Everything that is measured; of what several ways measure the worst. */
function measureAll(
  piece: JudgedPiece,
  limitOf: (rule: RuleName) => number,
): Readonly<Record<RuleName, Measured | undefined>> {
  const [line, groove, depth] = [limitOf("line"), limitOf("groove"), limitOf("groove-depth")];
  const rays = solidRays(piece);
  const solid = measureSolid(piece, rays);
  const art = measureArt(piece, { line, gap: limitOf("gap"), groove, "groove-depth": depth });
  const marks = measureMarks(piece, { line, groove, "groove-depth": depth, marks: limitOf("marks") });
  const shank = worst("at least", [solid.shank, marks.shank]);
  return {
    ...measureSection(piece),
    ...measureHeights(piece),
    ...measureHoles(piece, { hole: limitOf("hole"), "hole-depth": limitOf("hole-depth") }),
    ...art,
    shank,
    wall: worst("at least", [solid.wall, shank]),
    line: worst("at least", [art.line, marks.line]),
    groove: worst("at least", [art.groove, marks.groove]),
    "groove-depth": worst("at most", [art["groove-depth"], marks["groove-depth"]]),
    marks: marks.marks,
    bridge: measureBridges(piece),
    undercut: measureUndercut(piece),
    ...NO_STONES,
    ...measureStones(piece, rays, limitOf("girdles")),
  };
}

const SUBJECTS: Readonly<Record<RuleName, string>> = {
  shank: "the metal over the bore is down to",
  wall: "a wall is down to",
  line: "a raised line is down to",
  gap: "a gap between raised parts, or beside a rail, is down to",
  island: "a raised part that stands alone is as small as a circle of",
  groove: "a sunk line is down to",
  "groove-depth": "a gap or a sunk line is as deep as",
  hole: "a hole is down to",
  "hole-depth": "a hole is as deep as",
  bead: "beads are as small as",
  corner: "inner corners of the band have a radius of",
  edge: "outer edges of the band have a radius of",
  side: "a side of the band is down to",
  heavy: "into the band fits a ball of",
  relief: "relief is as low as",
  engraving: "what is sunk is as shallow as",
  post: "a raised part that stands alone is as high as",
  marks: "the room beside a mark is down to",
  bridge: "handles that the design does not imply:",
  undercut: "faces of the outside lean over the radius by up to",
  girdles: "the gap between two girdles is down to",
  web: "metal between two hollows is down to",
  under: "metal between a stone's hollow and the bore is down to",
  beside: "metal beside a hollow or groove is down to",
  bezel: "a bezel is down to",
  ledge: "the ledge under a stone is down to",
  prong: "prongs are as thin as",
  grain: "grains are as small as",
  held: "prongs or grains that hold a stone are as few as",
  level: "a table lies off the surface by",
  unfit: "stones whose gem does not bear flush setting:",
};

function inWords(rule: RuleName, limit: number, { figure, more }: Measured): string {
  const { unit, keep } = RULES[rule];
  const show = (value: number) => {
    if (unit === "mm") return showLength(value);
    if (unit === "°") return `${value.toFixed(1)}°`;
    return unit === "" ? String(value) : `${value.toFixed(1)} times its width`;
  };
  const added = more === undefined ? "" : `, ${more}`;
  return `${SUBJECTS[rule]} ${show(figure)}${added}; the rule asks for ${keep} ${show(limit)}`;
}

function placeOf(place: Place, wrap: BandSurface): FindingPlace {
  const [u, v] = "flat" in place ? place.flat : wrap.inverse(...place.space);
  const angle = degrees(wrap.angleAt(u));
  return { angle: angle - 360 * Math.floor(angle / 360), v, ...("space" in place ? { point: place.space } : {}) };
}
