/** A level top with its edge sharp, rounded or bevelled. */
import { z } from "zod";
import { AnnuletError } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { SectionForm } from "./section-form.js";
import { bevelledWall, draftField, heightField, roundedWall, WALL_DEFAULTS } from "./wall.js";

export const flatSectionSchema = z
  .strictObject({
    form: z.literal("flat").describe('"flat": a level top'),
    height: heightField.describe("height of the top above the seat, mm, above 0"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.round)
      .describe("radius of the top edge, mm; at most the height and half the narrowest width; default 0"),
    bevel: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.bevel)
      .describe("bevel of the top edge instead of a rounding, mm wide and high; limits as of `round`; default 0"),
    draft: draftField,
  })
  .refine(({ round, bevel }) => round === 0 || bevel === 0, { message: "give either round or bevel", path: ["bevel"] })
  .describe("A level top.");

export type FlatSection = z.output<typeof flatSectionSchema>;

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
