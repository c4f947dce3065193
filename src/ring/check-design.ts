/**
 * Castability of a design: built, measured, and judged by a rule set.
 */

import type { Warning } from "../base/errors.js";
import { degrees } from "../base/units.js";
import { rulesOf } from "../design/own-rules.js";
import type { RuleSet } from "../design/rules/rule-set.js";
import { type Judgement, judge } from "../judge/castability/judge.js";
import { type UnrolledBand, unrollBand } from "../judge/details/unrolled-band.js";
import { type BuildOptions, buildPiece } from "./build.js";

export interface CheckDesignOptions extends Omit<BuildOptions, "piece" | "geometry"> {
  /** The rule set: one of the built-in ones by name, or any value of its shape. Default what the design says. */
  readonly rules?: string | RuleSet;
}

export interface DesignCheck extends Judgement {
  readonly name: string;
  readonly rules: Pick<RuleSet, "name" | "summary">;
  /** What the drawing of findings shows. */
  readonly band: UnrolledBand;
  readonly warnings: readonly Warning[];
}

/**
 * Judges the finished piece of a design. Limits of the design's own stand above those of a named set.
 *
 * @param document the design document: an object, or JSON text
 * @throws as `build`; AnnuletError `rules-unknown`
 */
export async function checkDesign(document: unknown, options: CheckDesignOptions = {}): Promise<DesignCheck> {
  const { rules, ...rest } = options;
  const piece = await buildPiece(document, rest);
  const { design, profile, wrap, pattern, report } = piece;
  const set = typeof rules === "object" ? rules : rulesOf(design.rules, rules);
  const { results, findings } = judge({ ...piece, runs: report.beads, tolerance: design.tolerance }, set);
  options.onProgress?.({ stage: "done", share: 1 });
  return {
    name: design.name,
    rules: { name: set.name, summary: set.summary },
    results,
    findings,
    band: unrollBand(pattern, {
      around: wrap.round,
      seatLength: profile.seatLength,
      start: degrees(wrap.startAngle),
    }),
    warnings: report.warnings,
  };
}
