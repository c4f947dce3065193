/**
 * The design of the casting before it is finished: what finishing takes off is added to the sizes that it changes.
 *
 * The seat keeps its radius wherever a pattern stands on it, so the fit does not change. The pattern's relief is lifted
 * where it is laid out, since not every section has one height to change.
 */

import { grownProfile } from "../band/profile/grown.js";
import { finishedOf } from "../band/profile/outsides/index.js";
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { followsTile } from "../beads/bead-lines.js";
import { MARK_DEFAULTS } from "../design/marks.js";
import type { Design } from "../design/schema.js";
import { resolveSize } from "../size/size.js";
import type { Finishing } from "./allowances/allowance.js";

/** By how much each surface stands out beyond the finished one, mm. */
type Lifts = Readonly<Record<"seat" | "rail" | "bore", number>>;

/** @throws AnnuletError `finishing-too-deep` where finishing takes away what is raised on a finished face */
export function asCast(design: Design, finishing: Finishing): Design {
  const { profile, pattern, beads, lettering, hallmark } = design;
  const { bore, rails, relief } = finishing;
  const railed = finishedOf(profile.outside) === "rails";
  const outside = railed || pattern === undefined ? rails : 0;
  const lifts: Lifts = { seat: railed ? 0 : outside, rail: outside, bore };
  return {
    ...design,
    size: { diameter: resolveSize(design.size).diameter - 2 * bore },
    profile: grownProfile(profile, { bore, outside }),
    beads: beads.map((run) => {
      // Runs that follow the tile are lifted with the pattern.
      const onBand = run.along === "rail" || run.along === "step";
      const onRelief = pattern !== undefined && run.height > 0 && !onBand && !followsTile(run.along);
      return onRelief ? { ...run, height: run.height + relief } : run;
    }),
    lettering: lettering.map((text, i) => {
      if (text.mode === "sunk") return { ...text, depth: (text.depth ?? LETTERING.depth) + lifts[text.at] };
      return { ...text, relief: raisedBy(text.relief ?? LETTERING.relief, text.at, { lifts, relief, at: i }) };
    }),
    // A field that is level with its surface stays so.
    ...(hallmark === undefined || hallmark.depth === 0
      ? {}
      : { hallmark: { ...hallmark, depth: hallmark.depth + lifts[hallmark.at] } }),
    // Relief may be allowed more than the rails: it stands proud only until it is finished.
    proud: true,
  };
}

const { lettering: LETTERING } = MARK_DEFAULTS;

interface Raising {
  readonly lifts: Lifts;
  /** mm that finishing takes off what is raised. */
  readonly relief: number;
  /** Which text it is. */
  readonly at: number;
}

/** Height of raised letters before finishing: in the bore both they and what they stand on are finished alike. */
function raisedBy(height: number, surface: keyof Lifts, { lifts, relief, at }: Raising): number {
  if (surface === "bore") return height;
  const raised = height + relief - lifts[surface];
  if (raised > 0) return raised;
  throw new AnnuletError({
    code: "finishing-too-deep",
    message: `finishing takes ${showLength(lifts[surface])} off the ${surface}, on which the letters are only ${showLength(height)} high`,
    path: `lettering[${at}].relief`,
    value: height,
    allowed: `more than ${showLength(lifts[surface] - relief)}`,
    hint: "raise the letters, or give casting.finishing its own figures for rails and relief",
  });
}
