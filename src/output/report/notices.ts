/**
 * What a maker should know of a ring that no single stage could say.
 */

import type { Profile } from "../../band/profile/profile.js";
import type { Warning } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import { meshBounds } from "../../mesh/bounds.js";
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

/** What stands out by less beside the band is not told, mm: what a tolerance and rounding leave. Chosen. */
const STANDS_OUT = 0.02;

/** Advice on the size, what leans out beside the band, hollows that were filled, a kernel that had to be replaced. */
export function noticesOf({ profile, size, union }: NoticeOptions): Warning[] {
  const notices = [...sizeAdvice({ bandWidth: profile.width, bore: profile.bore, size })];
  const { min, max } = meshBounds(union.mesh);
  const [wide, out] = [max[2] - min[2], Math.max(max[2], -min[2]) - profile.width / 2];
  if (out > STANDS_OUT) {
    notices.push({
      code: "wider-than-band",
      message: `what is raised at the band's edge leans out beside it by ${showLength(out)}: the ring is ${showLength(wide)} wide, its band ${showLength(profile.width)}`,
      path: "profile.width",
      value: wide,
      allowed: `at most ${showLength(profile.width)}`,
      hint: "end the relief or the beads farther in, make them lower, or make the outside flatter towards its edges",
    });
  }
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
      message: `${union.failure?.problems[0].message ?? `the ${union.rejected} kernel's result was not closed`}; the ${union.kernel} kernel united the ring instead`,
      value: union.rejected,
      ...(union.failure === undefined
        ? {}
        : { hint: "mend that kernel, or leave it out: the ring is sound without it" }),
    });
  }
  return notices;
}
