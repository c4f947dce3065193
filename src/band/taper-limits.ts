/**
 * What is wrong with the sizes of a band that tapers, at the angle where it is, with how far it may taper.
 */
import { AnnuletError } from "../base/errors.js";
import { largestWhere } from "../base/math/largest.js";
import { degrees, showLength } from "../base/units.js";
import type { ProfileSpec } from "../design/profile/profile.js";
import type { SectionSizes } from "./taper.js";

export interface TooFar {
  readonly spec: ProfileSpec;
  /** The sizes that make no section, and the angle where they are, radians. */
  readonly sizes: SectionSizes;
  readonly angle: number;
  /** Draws a section of a width and a thickness; throws AnnuletError where it cannot. */
  readonly draw: (width: number, thickness: number) => unknown;
}

/** Sizes are told to this, mm. */
const TOLD = 1e-3;

/** The error for sizes that make no section, told from the one that the section itself gives. */
export function tooFarTapered(cause: AnnuletError, { spec, sizes, angle, draw }: TooFar): AnnuletError {
  const fits = ({ width, thickness }: SectionSizes) => {
    try {
      draw(width, thickness);
      return true;
    } catch (error) {
      if (error instanceof AnnuletError) return false;
      throw error;
    }
  };
  const where = Math.round(degrees(angle) * 10) / 10 - 360 * Math.floor(degrees(angle) / 360);
  const [problem] = cause.problems;
  const blamed = (["width", "thickness"] as const).find((size) => fits({ ...sizes, [size]: spec[size] }));
  const size = blamed ?? "thickness";
  const others = blamed === undefined ? spec : sizes;
  const at = (share: number) => spec[size] + share * (sizes[size] - spec[size]);
  const share = largestWhere(0, 1, (one) => fits({ ...others, [size]: at(one) }));
  const falls = sizes[size] < spec[size];
  const limit = falls ? Math.ceil(at(share) / TOLD) * TOLD : Math.floor(at(share) / TOLD) * TOLD;
  return new AnnuletError(
    {
      code: "taper-too-far",
      message: `at ${where}° the band is ${showLength(sizes.width)} wide and ${showLength(sizes.thickness)} thick, and there ${problem.message}`,
      path: `profile.taper.${size}`,
      value: sizes[size],
      allowed: `${falls ? "at least" : "at most"} ${showLength(limit)} at ${where}°${blamed === undefined ? ", with the width of the top" : ""}`,
      hint: `taper its ${size} less, or make ${fieldOf(problem.path)} smaller all round`,
    },
    { cause },
  );
}

function fieldOf(path: string | undefined): string {
  return path === undefined || path === "profile" ? "rails and edges" : path;
}
