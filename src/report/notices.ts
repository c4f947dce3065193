/**
 * What a maker should know of a ring that no single stage could say.
 */
import type { Design } from "../design/schema.js";
import type { Warning } from "../errors.js";
import type { Profile } from "../profile/profile.js";
import { sizeAdvice } from "../sizing/size-advice.js";
import type { UnionResult } from "../union/union.js";

export interface NoticeOptions {
  readonly design: Design;
  readonly profile: Profile;
  readonly union: UnionResult;
}

/** Advice on the size, allowances that are recorded but not applied, a kernel that had to be replaced. */
export function noticesOf({ design, profile, union }: NoticeOptions): Warning[] {
  const notices = [...sizeAdvice({ bandWidth: profile.width, bore: profile.bore })];
  if (design.casting !== undefined && (design.casting.shrinkage > 0 || design.casting.finishing > 0)) {
    notices.push({
      code: "casting-not-applied",
      message:
        "the casting allowances are recorded but not applied: the mesh is the finished piece at its finished size",
      path: "casting",
      value: design.casting,
      hint: "scale the master by 1 / (1 − shrinkage) in the printing software, and ask your caster for the figure",
    });
  }
  if (union.rejected !== undefined) {
    notices.push({
      code: "kernel-replaced",
      message: `the ${union.rejected} kernel's result was not closed; the ${union.kernel} kernel united the ring instead`,
      value: union.rejected,
    });
  }
  return notices;
}
