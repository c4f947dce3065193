/**
 * What is drawn: the regions of a tile, a medallion among the tiles, and how the pattern ends.
 */
import { z } from "zod";
import { cycleSchema } from "../cycle.js";
import { symmetry } from "./common.js";
import { PATTERN_DEFAULTS } from "./defaults.js";
import { regionSchema } from "./region.js";

const regions = z.array(regionSchema).max(500);

/** Most tiles that a medallion or an ornament may be wide. */
const MAX_WIDE = 500;

const medallionSchema = z
  .strictObject({
    tiles: z.int().min(1).max(MAX_WIDE).describe("tiles it takes the place of, 1 to 500"),
    symmetry: symmetry.describe("frieze group that completes its art; default p1"),
    regions: regions.describe("its art, in one tile 1 wide and as high as the rows"),
  })
  .describe("takes the place of tiles at the top, with art of its own")
  .meta({ id: "medallion" });

const stopLineSchema = z
  .strictObject({
    form: z.literal("line"),
    width: z.number().min(0.1).max(10).describe("width of the line, mm, 0.1 to 10; its outer side is the end"),
    height: z.number().positive().max(10).describe("its height, mm, above 0"),
    round: z.number().min(0).max(5).default(0).describe("radius of its top edges, mm; default 0"),
  })
  .describe("a line across the seat");

export const endsSchema = z
  .discriminatedUnion("form", [
    z.strictObject({ form: z.literal("cut") }).describe("cut off straight"),
    stopLineSchema,
    z
      .strictObject({
        form: z.literal("fade"),
        length: z.number().min(0.2).max(50).describe("mm over which the relief sinks to the seat"),
      })
      .describe("sinks into the seat; holes are cut, beads keep clear"),
    z
      .strictObject({
        form: z.literal("ornament"),
        tiles: z.int().min(1).max(MAX_WIDE).default(1).describe("its width in tiles, 1 to 500; default 1"),
        symmetry: symmetry.describe("frieze group that completes its art; default p1"),
        regions: regions.describe("its art beyond the end, in one tile, x = 0 at the end; the other end mirrors it"),
      })
      .describe("art beyond each end where cover is under 360"),
  ])
  .describe("how it ends at its plain zone and medallion; default cut")
  .meta({ id: "ends" });

export const parts = {
  symmetry: symmetry.describe("frieze group (IUC name) that completes the art; default p1"),
  cycle: cycleSchema.default(PATTERN_DEFAULTS.cycle),
  regions: regions.default([]).describe("what is drawn in the tile"),
  medallion: medallionSchema.optional(),
  ends: endsSchema.optional(),
};

export type EndsSpec = z.infer<typeof endsSchema>;
