/**
 * The cross-section of a casting before it is finished: as much larger as finishing takes off, each form as it says itself.
 */
import type { ProfileSpec } from "../../design/profile/profile.js";
import { grownBore } from "./bores/index.js";
import type { Growth } from "./form.js";
import { grownOutside } from "./outsides/index.js";

/** A cross-section with more metal in the bore and on the outside; the bore's radius is smaller by `by.bore` beside that. */
export function grownProfile(profile: ProfileSpec, by: Growth): ProfileSpec {
  return {
    ...profile,
    thickness: profile.thickness + by.bore + by.outside,
    bore: grownBore(profile.bore, by),
    outside: grownOutside(profile.outside, by),
  };
}
