/**
 * The cross-section of a casting before it is finished: as much larger as finishing takes off, each form as it says itself.
 */
import type { ProfileSpec } from "../../design/profile/profile.js";
import type { TaperSpec } from "../../design/profile/taper.js";
import { grownBore } from "./bores/index.js";
import type { Growth } from "./form.js";
import { grownOutside } from "./outsides/index.js";

/** A cross-section with more metal in the bore and on the outside; the bore's radius is smaller by `by.bore` beside that. */
export function grownProfile(profile: ProfileSpec, by: Growth): ProfileSpec {
  const { taper, step } = profile;
  const grown = {
    ...profile,
    // Its ledge is not finished: it keeps its radius.
    ...(step === undefined ? {} : { step: { ...step, depth: step.depth + by.outside } }),
    thickness: profile.thickness + by.bore + by.outside,
    bore: grownBore(profile.bore, by),
    outside: grownOutside(profile.outside, by),
  };
  return taper === undefined ? grown : { ...grown, taper: grownTaper(taper, by) };
}

/** A thickness that is not given follows from the others, which are all larger. */
function grownTaper(taper: TaperSpec, { bore, outside }: Growth): TaperSpec {
  const thicker = <Sizes extends Pick<TaperSpec, "thickness">>(sizes: Sizes): Sizes => {
    return sizes.thickness === undefined ? sizes : { ...sizes, thickness: sizes.thickness + bore + outside };
  };
  return { ...thicker(taper), between: taper.between.map(thicker) };
}
