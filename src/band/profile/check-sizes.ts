/**
 * Refuses sizes that are no lengths, or too large or too small to be drawn, before anything is built from them.
 */
import { AnnuletError } from "../../base/errors.js";
import { LARGEST_SIZE } from "../../design/profile/limits.js";
import type { ProfileSpec } from "../../design/profile/profile.js";
import { LEAST_TOLERANCE } from "./least-sizes.js";

/** @throws AnnuletError `profile-not-finite` */
export function checkSizes(spec: ProfileSpec, boreRadius: number, tolerance: number): void {
  if (!(tolerance >= LEAST_TOLERANCE)) throw notALength("tolerance", tolerance, `${LEAST_TOLERANCE} mm or more`);
  const sizes = { "profile.width": spec.width, "profile.thickness": spec.thickness, size: boreRadius, tolerance };
  for (const [path, value] of Object.entries(sizes)) {
    if (!(value > 0 && value <= LARGEST_SIZE)) throw notALength(path, value, `above 0, at most ${LARGEST_SIZE} mm`);
  }
  for (const part of ["bore", "outside", "step"] as const) {
    for (const [name, value] of Object.entries(spec[part] ?? {})) {
      if (typeof value !== "number" || (Number.isFinite(value) && value >= 0)) continue;
      throw notALength(`profile.${part}.${name}`, value, "0 mm or more");
    }
  }
}

function notALength(path: string, value: number, allowed: string): AnnuletError {
  return new AnnuletError({
    code: "profile-not-finite",
    message: "a size of the cross-section is not a length that can be drawn",
    path,
    value,
    allowed,
  });
}
