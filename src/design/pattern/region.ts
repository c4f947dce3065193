/**
 * A region: what is drawn in a tile, and what becomes of it.
 */
import { z } from "zod";
import { placeSchema } from "../art/art-place.js";
import { checkHeightFields } from "../art/height-rules.js";
import { mapSchema } from "../art/image-map.js";
import { takeSchema } from "../art/svg-take.js";
import { textArtSchema } from "../art/text-art.js";
import { textureSchema } from "../art/texture.js";
import { checkArtFields } from "../art-rules.js";
import { tilesSchema } from "../cycle.js";
import { motifSchema } from "../motifs/motif.js";
import { fillRule, pathData } from "../path-schema.js";
import { checkModeFields } from "../region-rules.js";
import { sectionSchema } from "../sections/section.js";
import { shapeSchema } from "../shapes/shape.js";
import { beadSize } from "./bead-fields.js";
import { lengthUnit } from "./common.js";
import { composeFields } from "./compose.js";
import { PATTERN_DEFAULTS } from "./defaults.js";
import { edgeSchema } from "./edge.js";
import { ribbonSchema } from "./ribbon.js";

const regionBeadsSchema = z
  .strictObject({
    ...beadSize,
    on: z
      .union([z.enum(["centre", "border"]), z.number().min(0).max(50)])
      .default("centre")
      .describe("centre (the ribbon's line), border (the outline), or mm inside it"),
  })
  .describe("a bead run on it");

export const regionSchema = z
  .strictObject({
    name: z.string().min(1).max(200).optional().describe("what messages call it; default region and its number"),
    path: pathData.optional(),
    svg: z
      .string()
      .min(1)
      .max(300)
      .optional()
      .describe("SVG file in the design's folder or below; all that is painted counts; fill does not apply"),
    take: takeSchema.optional(),
    shape: shapeSchema.optional().describe("drawings combined or copied"),
    motif: motifSchema.optional(),
    text: textArtSchema.optional(),
    place: placeSchema.optional(),
    image: z
      .string()
      .min(1)
      .max(300)
      .optional()
      .describe("PNG file in the design's folder or below, a height map; height or depth is from black to white"),
    texture: textureSchema.optional(),
    map: mapSchema.optional(),
    unit: lengthUnit,
    tiles: tilesSchema.optional(),
    fill: fillRule.default(PATTERN_DEFAULTS.region.fill),
    ribbon: ribbonSchema.optional(),
    edge: edgeSchema.optional(),
    mode: z
      .enum(["raised", "sunk", "pierced"])
      .default(PATTERN_DEFAULTS.region.mode)
      .describe(
        "on the seat, into it, or through the wall; what is sunk or pierced also cuts raised regions before it; default raised",
      ),
    height: z
      .number()
      .positive()
      .max(10)
      .optional()
      .describe("raised: height of a level top, mm, above 0; short for a flat section"),
    depth: z
      .number()
      .positive()
      .max(10)
      .optional()
      .describe("sunk: depth of a level floor, mm, above 0; short for a flat section"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(PATTERN_DEFAULTS.region.round)
      .describe("radius of the edge of top or floor, mm, to the height or depth and half the width; default 0"),
    section: sectionSchema
      .optional()
      .describe("the region cut across, instead of height and round; if sunk turned over, its height the depth"),
    beneath: z
      .boolean()
      .optional()
      .describe("raised: goes on beneath the rails, cut off as it stands; may leave the tile across; default false"),
    upright: z
      .boolean()
      .optional()
      .describe(
        "raised or sunk: walls along the radius: none leans over, nor out at the band's edge; default false: along the normal",
      ),
    broken: z
      .number()
      .min(0)
      .max(2)
      .default(PATTERN_DEFAULTS.region.broken)
      .describe("pierced: radius of the hole's edges, which widen it, mm; default 0"),
    ...composeFields,
    beads: regionBeadsSchema.optional(),
  })
  .superRefine(checkModeFields)
  .superRefine(checkArtFields)
  .superRefine(checkHeightFields)
  .meta({ id: "region" });

export type RegionSpec = z.infer<typeof regionSchema>;
