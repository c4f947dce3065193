/**
 * How an image or a texture becomes relief: the document's `map`.
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
      .describe("height or depth of the least raised or sunk pixel or place, mm, 0 to 10; default 0"),
    invert: z
      .boolean()
      .default(MAP_DEFAULTS.invert)
      .describe("whether dark, not light, is high, also of a sunk image; default false"),
    over: z
      .enum(["tile", "band"])
      .default(MAP_DEFAULTS.over)
      .describe("tile (repeats, completed by the symmetry) or band (once over the pattern); default tile"),
    resolution: z
      .number()
      .min(0.01)
      .max(1)
      .optional()
      .describe(
        "mm from sample to sample, 0.01 to 1; default 8 tolerances, of a texture a sixth of its size if less, coarser past 300 000 samples",
      ),
    smooth: z
      .number()
      .min(0)
      .max(2)
      .optional()
      .describe("image: standard deviation of the Gaussian it is smoothed by, mm, 0 to 2; default the resolution"),
    seam: z
      .union([
        z.literal("exact"),
        z.strictObject({ blend: z.number().min(0.05).max(20).describe("width of the blend, mm, 0.05 to 20") }),
      ])
      .default(MAP_DEFAULTS.seam)
      .describe(
        "image: where it meets itself: exact (left and right match or are mirrored) or {blend} (its ends go over into each other); default exact",
      ),
    edge: z
      .number()
      .min(0)
      .max(20)
      .optional()
      .describe(
        "mm over which it falls to nothing at the seat's edges and ends, 0 (upright) to 20; default 0 at rails, else 0.3",
      ),
  })
  .describe("from image or texture to relief");

export type MapSpec = z.infer<typeof mapSchema>;
