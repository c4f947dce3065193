/**
 * What a maker should know of a ring that no single stage could say.
 */

import type { Profile } from "../../band/profile/profile.js";
import type { Warning } from "../../base/errors.js";
import type { ResolvedSize } from "../../size/size.js";
import { sizeAdvice } from "../../size/size-advice.js";
import type { UnionResult } from "../../union/union.js";

export interface NoticeOptions {
  readonly profile: Profile;
  readonly size: ResolvedSize;
  readonly union: UnionResult;
}

/** Places that are told. */
const PLACES_SHOWN = 10;

/** Advice on the size, hollows that were filled, a kernel that had to be replaced. */
export function noticesOf({ profile, size, union }: NoticeOptions): Warning[] {
  const notices = [...sizeAdvice({ bandWidth: profile.width, bore: profile.bore, size })];
  if (union.hollows.length > 0) {
    const { length } = union.hollows;
    notices.push({
      code: "hollow-filled",
      message: `${length} hollow${length === 1 ? " was" : "s were"} sealed in between beads and what they stand on, and filled`,
      value: {
        hollows: length,
        volume: union.hollows.reduce((sum, hollow) => sum + hollow.volume, 0),
        places: union.hollows.slice(0, PLACES_SHOWN).map(({ place }) => place),
      },
      hint: "keep beads clear of the walls and of beads of other runs where a clean recess is wanted",
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
