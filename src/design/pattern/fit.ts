/**
 * How many tiles go round and what gives way.
 */
import { z } from "zod";
import { PATTERN_DEFAULTS } from "./defaults.js";

export const fitSchema = z.strictObject({
  repeats: z
    .union([z.literal("auto"), z.int().min(1).max(1000)])
    .default(PATTERN_DEFAULTS.fit.repeats)
    .describe("tiles round the band: auto (nearest to the drawn band) or 1 to 1000; default auto"),
  rows: z.int().min(1).max(50).default(PATTERN_DEFAULTS.fit.rows).describe("rows of tiles across the band; default 1"),
  aspect: z
    .number()
    .min(0.05)
    .max(20)
    .default(PATTERN_DEFAULTS.fit.aspect)
    .describe("height of a tile over its width, 0.05 to 20; default 1"),
  hold: z
    .enum(["tile", "band"])
    .default(PATTERN_DEFAULTS.fit.hold)
    .describe("what stays: tile (the band's width follows) or band (the tile stretches); default tile"),
  taper: z
    .enum(["narrow", "keep"])
    .default(PATTERN_DEFAULTS.fit.taper)
    .describe(
      "where the band tapers, tiles narrow or keep their size: art is cut off at the seat's edge, with slivers too narrow for its edges; not with lanes, weaves, images, textures; default narrow",
    ),
});

export type FitSpec = z.infer<typeof fitSchema>;
