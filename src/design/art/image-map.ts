/**
 * How an image becomes relief: the document's `map`.
 */
import { z } from "zod";

/** Defaults of a height map. */
export const MAP_DEFAULTS = { base: 0, invert: false, over: "tile", seam: "exact" } as const;

export const mapSchema = z
  .strictObject({
    base: z
      .number()
      .min(0)
      .max(10)
      .default(MAP_DEFAULTS.base)
      .describe(
        "height of the least raised pixel above the seat, of a sunk image depth of the least sunk one, mm, 0 to 10; default 0: nothing there",
      ),
    invert: z
      .boolean()
      .default(MAP_DEFAULTS.invert)
      .describe("whether dark is high and light is low; default false: light is high, also of a sunk image"),
    over: z
      .enum(["tile", "band"])
      .default(MAP_DEFAULTS.over)
      .describe(
        "what the image fills: tile (repeats, completed by the symmetry) or band (once over all that the pattern covers); default tile",
      ),
    resolution: z
      .number()
      .min(0.01)
      .max(1)
      .optional()
      .describe(
        "mm from sample to sample of the relief, 0.01 to 1; default 8 tolerances, coarser past 300 000 samples",
      ),
    smooth: z
      .number()
      .min(0)
      .max(2)
      .optional()
      .describe("how far the relief is smoothed: standard deviation of a Gaussian, mm, 0 to 2; default the resolution"),
    seam: z
      .union([
        z.literal("exact"),
        z.strictObject({ blend: z.number().min(0.05).max(20).describe("width of the blend, mm, 0.05 to 20") }),
      ])
      .default(MAP_DEFAULTS.seam)
      .describe(
        "where the image meets itself: exact (left and right must meet, or the symmetry mirrors them) or {blend} (its ends overlap and go over into each other); default exact",
      ),
    edge: z
      .number()
      .min(0)
      .max(20)
      .optional()
      .describe(
        "mm over which the relief falls to nothing at the seat's edges and at the pattern's ends; 0: it ends upright, beneath rails where there are any; default 0 at rails, else 0.3",
      ),
  })
  .describe("how the image becomes relief");

export type MapSpec = z.infer<typeof mapSchema>;
