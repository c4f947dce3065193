/** A level top with its edge sharp, rounded or bevelled. */
import { AnnuletError } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { FlatSection } from "../../design/sections/flat.js";
import type { SectionForm } from "./section-form.js";
import { bevelledWall, roundedWall } from "./wall.js";

export const flatSection: SectionForm<FlatSection> = {
  draw({ height, round, bevel, draft }, { tolerance, path }) {
    const field = bevel > 0 ? "bevel" : "round";
    const value = Math.max(round, bevel);
    if (value > height) throw edgeTooLarge({ path, field, value, largest: height, why: "the region is only so high" });
    return bevel > 0 ? bevelledWall(height, bevel, draft) : roundedWall(height, round, draft, tolerance);
  },
};

/** The error of a top edge that does not fit; `path` is the section's place. */
export function edgeTooLarge(edge: {
  readonly path: string;
  readonly field: "round" | "bevel";
  readonly value: number;
  readonly largest: number;
  readonly why: string;
}): AnnuletError {
  const { path, field, value, largest, why } = edge;
  return new AnnuletError({
    code: `${field}-too-large`,
    message: `a top edge ${field === "round" ? "rounded" : "bevelled"} by ${showLength(value)} does not fit: ${why}`,
    path: `${path}.${field}`,
    value,
    allowed: `0 to ${showLength(Math.floor(largest * 1000) / 1000)}`,
    hint: `make the ${field === "round" ? "rounding" : "bevel"} smaller, or the region wider or higher`,
  });
}
