/**
 * An outside drawn freely, as SVG path data or as points: its fields.
 */
import { z } from "zod";

/** A drawing's ends may meet the bore, where the bore's edge is the only one: so sharp. */
const FREE_DEFAULTS = { edge: 0 } as const;

const point = z.tuple([z.number(), z.number()]);

export const freeSchema = z
  .strictObject({
    form: z.literal("free"),
    path: z
      .string()
      .optional()
      .describe(
        "SVG path data in (w, height above the bore's narrowest circle), mm, y up: one open run from −w to +w, stretched to the width. Or give points.",
      ),
    points: z.array(point).min(2).optional().describe("[w, height] in mm, joined by straight lines."),
    seat: point.optional().describe("From w to w of what carries the pattern, mm, as drawn; default all."),
    edge: z.number().min(0).default(FREE_DEFAULTS.edge).describe("Radius at the side walls, mm, 0 or more; default 0."),
  })
  .refine((spec) => (spec.path === undefined) !== (spec.points === undefined), "give either path or points")
  .describe("Drawn freely; its highest point is the thickness.");

export type FreeSpec = z.output<typeof freeSchema>;
