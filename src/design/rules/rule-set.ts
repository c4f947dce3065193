/**
 * Rule sets: limits below which a detail may not come out, each with its source. Any value of this shape can stand beside
 * the built-in ones.
 */
import type { Certainty } from "../../measure/alloys/alloy.js";

/** How grave it is where a limit is not kept: an error fails `annulet check`, a note only tells. */
export type Severity = "error" | "warning" | "note";

/** What is measured, in which unit, and whether the figure must be at least or at most the limit. */
export const RULES = {
  shank: { what: "metal from the bore straight out", unit: "mm", keep: "at least" },
  wall: { what: "metal between any two faces", unit: "mm", keep: "at least" },
  line: { what: "raised line", unit: "mm", keep: "at least" },
  gap: { what: "gap between raised parts, and to the rails", unit: "mm", keep: "at least" },
  island: { what: "raised part that stands alone, diameter by area", unit: "mm", keep: "at least" },
  groove: { what: "sunk line", unit: "mm", keep: "at least" },
  "groove-depth": { what: "depth of a gap or a sunk line over its width", unit: "×", keep: "at most" },
  hole: { what: "hole", unit: "mm", keep: "at least" },
  bead: { what: "bead", unit: "mm", keep: "at least" },
  corner: { what: "radius of inner corners", unit: "mm", keep: "at least" },
} as const;

/** Name of a rule of castability. */
export type RuleName = keyof typeof RULES;

/** Every rule, in the order of tables. */
export const RULE_NAMES = Object.keys(RULES) as readonly RuleName[];

/** The limit of one rule. */
export interface RuleLimit {
  /** In the rule's unit. */
  readonly limit: number;
  readonly severity: Severity;
  readonly source: string;
  readonly certainty: Certainty;
}

/** Limits that castability is judged by. */
export interface RuleSet {
  /** Small letters and hyphens. */
  readonly name: string;
  /** One line. */
  readonly summary: string;
  readonly limits: Readonly<Record<RuleName, RuleLimit>>;
}
