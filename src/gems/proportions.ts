/**
 * Proportions as they are asked for: by name, as shares or as angles; held to their ranges and to whether the stone closes.
 */
import { AnnuletError, type Problem } from "../base/errors.js";
import { crownHeightAt, pavilionDepthAt } from "./angles.js";
import { requireCloses } from "./closes.js";
import type { Cut, StoneSize } from "./cut.js";
import { TOLKOWSKY } from "./cuts/usual.js";
import type { Proportions } from "./stone.js";

/** What is asked for by hand: all are shares of the width (0 to 1) but the angles; what is left out is as usual. */
export interface ProportionsInput {
  readonly table?: number | undefined;
  /** Degrees, across the width; instead of `crownHeight`. */
  readonly crownAngle?: number | undefined;
  readonly crownHeight?: number | undefined;
  readonly girdle?: number | undefined;
  /** Degrees, across the width; instead of `pavilionDepth`. */
  readonly pavilionAngle?: number | undefined;
  readonly pavilionDepth?: number | undefined;
  readonly culet?: number | undefined;
  readonly star?: number | undefined;
  readonly lowerHalf?: number | undefined;
}

/** Names of proportions. `tolkowsky` is of brilliants. */
export const PROPORTION_NAMES = ["usual", "tolkowsky"] as const;

/** Proportions by name or by hand. */
export type ProportionsSpec = (typeof PROPORTION_NAMES)[number] | ProportionsInput;

/** What a value may be: above `over`, or from `from`, up to `to`. */
interface Range {
  readonly over?: number;
  readonly from?: number;
  readonly to: number;
}

/** Ranges of what is drawn at all; chosen, wider than any stone that is cut. */
const RANGES: Readonly<Record<keyof ProportionsInput, Range>> = {
  table: { over: 0, to: 0.95 },
  crownAngle: { over: 0, to: 80 },
  crownHeight: { over: 0, to: 1 },
  girdle: { over: 0, to: 0.5 },
  pavilionAngle: { over: 0, to: 80 },
  pavilionDepth: { over: 0, to: 1.5 },
  culet: { from: 0, to: 0.5 },
  star: { over: 0, to: 0.95 },
  lowerHalf: { over: 0, to: 0.95 },
};

/** What a cabochon has none of. */
const NOT_OF_DOMES = ["table", "crownAngle", "pavilionAngle", "pavilionDepth", "culet"] as const;

/**
 * The proportions of a stone.
 *
 * @param size of the stone, mm: whether long stones close depends on length : width
 * @throws AnnuletError with all problems: `proportions-invalid`; then `proportions-cannot-close`
 */
export function proportionsOf(
  cut: Cut,
  size: StoneSize,
  spec: ProportionsSpec = "usual",
  path = "proportions",
): Proportions {
  const proportions = readSpec(cut, spec, path);
  requireCloses(cut, size, proportions, path);
  return proportions;
}

function readSpec(cut: Cut, spec: ProportionsSpec, path: string): Proportions {
  const isBrilliant = cut.proportions.star !== undefined;
  if (spec === "usual") return cut.proportions;
  if (spec === "tolkowsky" && isBrilliant) return TOLKOWSKY;
  if (typeof spec !== "object" || spec === null || Array.isArray(spec)) {
    const names = isBrilliant ? '"usual", "tolkowsky"' : '"usual"';
    throw new AnnuletError({
      code: "proportions-invalid",
      message: `the cut ${cut.name} has no such proportions`,
      path,
      value: spec,
      allowed: `${names}, or an object of shares and angles`,
    });
  }
  const problems = problemsOf(cut, spec, path);
  if (problems.length > 0) throw new AnnuletError(problems);
  return withDefaults(cut.proportions, spec);
}

function withDefaults(usual: Proportions, spec: ProportionsInput): Proportions {
  const { table = usual.table, girdle = usual.girdle, culet = usual.culet } = spec;
  const { star = usual.star, lowerHalf = usual.lowerHalf, crownAngle, pavilionAngle } = spec;
  const crownHeight = crownAngle === undefined ? spec.crownHeight : crownHeightAt(crownAngle, table);
  const pavilionDepth = pavilionAngle === undefined ? spec.pavilionDepth : pavilionDepthAt(pavilionAngle, culet);
  const made = {
    table,
    crownHeight: crownHeight ?? usual.crownHeight,
    girdle,
    pavilionDepth: pavilionDepth ?? usual.pavilionDepth,
    culet,
  };
  return star === undefined || lowerHalf === undefined ? made : { ...made, star, lowerHalf };
}

function problemsOf(cut: Cut, spec: ProportionsInput, path: string): Problem[] {
  const isDome = cut.proportions.table === 0;
  const none: readonly string[] = [
    ...(isDome ? NOT_OF_DOMES : []),
    ...(cut.proportions.star === undefined ? ["star", "lowerHalf"] : []),
  ];
  const known = Object.keys(RANGES).filter((name) => !none.includes(name));
  const problems: Problem[] = [];
  const complain = (name: string | undefined, message: string, allowed: string, value: unknown) =>
    problems.push({
      code: "proportions-invalid",
      message,
      path: name === undefined ? path : `${path}.${name}`,
      value,
      allowed,
    });
  for (const [name, value] of Object.entries(spec)) {
    // A cabochon's own proportions say 0 of what it has none of.
    if (value === undefined || (isDome && value === 0 && none.includes(name))) continue;
    if (!known.includes(name)) {
      complain(name, `the cut ${cut.name} has no such share`, known.join(", "), value);
    } else if (!isWithin(RANGES[name as keyof ProportionsInput], value)) {
      complain(name, "is no share or angle of a stone", showRange(RANGES[name as keyof ProportionsInput]), value);
    }
  }
  for (const [angle, height] of [
    ["crownAngle", "crownHeight"],
    ["pavilionAngle", "pavilionDepth"],
  ] as const) {
    if (spec[angle] !== undefined && spec[height] !== undefined)
      complain(undefined, "is given in two ways", `either ${angle} or ${height}`, spec);
  }
  return problems;
}

function isWithin({ over, from, to }: Range, value: unknown): boolean {
  return typeof value === "number" && value <= to && (over === undefined || value > over) && value >= (from ?? 0);
}

function showRange({ over, from, to }: Range): string {
  return over === undefined ? `a number from ${from} to ${to}` : `a number above ${over} and at most ${to}`;
}
