/**
 * What the castability checks find, as plain data.
 */
import type { Point3 } from "../base/math/point.js";
import type { RuleName, Severity } from "../design/rules/rule-set.js";

/** A place on the ring. */
export interface FindingPlace {
  /** Degrees counter-clockwise from +x seen from +z; the top of the ring is 90. */
  readonly angle: number;
  /** mm across the seat from its middle, + towards +z, as far along the outside as it goes straight on from the seat. */
  readonly v: number;
  /** In space, where it was found on the solid, mm. */
  readonly point?: Point3;
}

/** A limit that is not kept. */
export interface Finding {
  readonly rule: RuleName;
  readonly severity: Severity;
  /** What was measured, and the limit it misses, in the rule's unit. */
  readonly figure: number;
  readonly limit: number;
  readonly unit: string;
  /** One sentence that a maker understands. */
  readonly message: string;
  /** Where the limit comes from. */
  readonly source: string;
  /** Worst first; none where the whole is meant. */
  readonly places: readonly FindingPlace[];
}

/** One rule with what was measured for it, whether kept or not. */
export interface RuleResult {
  readonly rule: RuleName;
  /** What is measured, in words. */
  readonly what: string;
  /** Null where nothing of the kind is there, or nothing is as small as the limit. */
  readonly figure: number | null;
  readonly limit: number;
  readonly unit: string;
  readonly severity: Severity;
  readonly source: string;
  readonly kept: boolean;
  /** What was left out of it, in words; empty where nothing is. */
  readonly without: string;
}
