/**
 * Which fields of a group of stones go together.
 */
import type { z } from "zod";
import type { CutName } from "../../gems/stone.js";
import { complainTo } from "../complain.js";
import type { ProportionsSpec } from "./proportions.js";
import type { StonePlaceSpec } from "./stone-place.js";

/** Cuts that are as long as they are wide. */
const EQUAL: readonly CutName[] = ["round", "princess", "square-step"];

/** The fields that decide. */
export interface GroupFields {
  readonly cut: CutName;
  readonly size: number;
  readonly width?: number | undefined;
  readonly narrow?: number | undefined;
  readonly proportions: ProportionsSpec;
  readonly place: StonePlaceSpec;
}

/** Raises an issue at fields that do not go with others. */
export function checkGroup(
  { cut, size, width, narrow, proportions, place }: GroupFields,
  context: z.RefinementCtx,
): void {
  const complain = complainTo(context);
  if (width !== undefined && EQUAL.includes(cut) && width !== size) {
    complain("width", `does not belong to ${cut}, which is as wide as it is long`);
  } else if (width !== undefined && width > size) complain("width", "is more than the length, which is the size");
  if (narrow !== undefined && cut !== "tapered-baguette") complain("narrow", `belongs to tapered-baguette, not ${cut}`);
  else if (narrow !== undefined && width !== undefined && narrow > width) complain("narrow", "is more than the width");
  if (proportions === "tolkowsky" && cut !== "round")
    complain("proportions", `is Tolkowsky's, which is a round stone's, not ${cut}`);
  if (typeof proportions === "object") {
    const { crownAngle, crownHeight, pavilionAngle, pavilionDepth } = proportions;
    if (crownAngle !== undefined && crownHeight !== undefined)
      complain("proportions", "has crownAngle and crownHeight: say one");
    if (pavilionAngle !== undefined && pavilionDepth !== undefined)
      complain("proportions", "has pavilionAngle and pavilionDepth: say one");
  }
  checkPlace(place, context);
}

function checkPlace(place: StonePlaceSpec, context: z.RefinementCtx): void {
  const complain = (field: string, message: string) =>
    context.addIssue({ code: "custom", path: ["place", field], message });
  if (place.form === "line" && (place.path === undefined) === (place.shape === undefined))
    complainTo(context)("place", "needs a path or a shape, one of the two");
  if (place.form !== "line" && place.form !== "row") return;
  if (place.gap !== undefined && place.count !== undefined)
    complain("count", "is given instead of a gap, not beside it");
  if (place.form !== "row" || typeof place.over === "string") return;
  const { from, to } = place.over;
  if (to <= from || to - from > 360) complain("over", "goes from an angle to a larger one, at most 360° on");
}
