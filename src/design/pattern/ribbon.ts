/**
 * The ribbon's part of a region: its width and how it changes, its side, copies, corners and ends.
 */
import { z } from "zod";
import { weaveSchema } from "./weave.js";

export const RIBBON_DEFAULTS = { join: "miter", ends: "butt" } as const;

/** Most places at which a ribbon's width is given, and most copies of it. */
const MOST_WIDTHS = 100;

const MOST_COPIES = 50;

const widestRibbon = 50;

export const ribbonSchema = z
  .strictObject({
    width: z.number().positive().max(widestRibbon).describe("width, mm, above 0; of a tapering ribbon at its start"),
    to: z
      .number()
      .min(0)
      .max(widestRibbon)
      .optional()
      .describe(
        "width at the line's end, mm, 0 (a point) or more, to which it tapers evenly; half way on a line that closes or that its images carry on; default no taper",
      ),
    widths: z
      .array(
        z.tuple([
          z.number().positive().max(1).describe("share of the line's length, above 0 to 1"),
          z.number().min(0).max(widestRibbon).describe("width there, mm"),
        ]),
      )
      .min(1)
      .max(MOST_WIDTHS)
      .optional()
      .describe(
        "widths along it, instead of `to`, [share of the line's length, mm], shares rising; straight between them, the last to the end",
      ),
    side: z.enum(["inside", "outside", "centre"]).optional().describe("side of a closed border; default inside"),
    copies: z
      .strictObject({
        count: z.int().min(2).max(MOST_COPIES).describe("ribbons side by side, 2 to 50"),
        gap: z.number().positive().max(widestRibbon).describe("gap between neighbours, mm, above 0"),
      })
      .optional()
      .describe(
        "ribbons side by side, centred on an open line or with side centre, else in from the border; default one",
      ),
    weave: weaveSchema.optional(),
    join: z
      .enum(["miter", "round"])
      .default(RIBBON_DEFAULTS.join)
      .describe("corners; where it tapers always round; default miter"),
    ends: z
      .enum(["butt", "round", "square"])
      .default(RIBBON_DEFAULTS.ends)
      .describe("ends of open lines; default butt"),
  })
  .superRefine(({ to, widths, side, copies, weave }, context) => {
    const complain = (path: (string | number)[], message: string) =>
      context.addIssue({ code: "custom", path, message });
    const tapers = to !== undefined || widths !== undefined;
    if (to !== undefined && widths !== undefined) complain(["widths"], "is given beside `to`: keep one of them");
    if (tapers && (side === "inside" || side === "outside")) {
      complain(["side"], 'cannot be a side of the border where the ribbon tapers: say "centre"');
    }
    if (tapers && copies !== undefined) complain(["copies"], "cannot stand side by side where the ribbon tapers");
    if (weave !== undefined) {
      if (tapers) complain(["weave"], "cannot be where the ribbon tapers");
      if (side === "inside" || side === "outside") complain(["side"], 'must be "centre" where the ribbon is woven');
    }
    widths?.forEach(([share], i) => {
      if (i > 0 && share <= widths[i - 1][0]) complain(["widths", i, 0], "must be above the share before it");
    });
  })
  .describe("a ribbon along the path, not a filled region")
  .meta({ id: "ribbon" });

export type RibbonSpec = z.infer<typeof ribbonSchema>;
