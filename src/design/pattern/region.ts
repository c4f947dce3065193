/**
 * A region: what is drawn in a tile, and what becomes of it.
 */
import { z } from "zod";
import { placeSchema } from "../art/art-place.js";
import { mapSchema } from "../art/image-map.js";
import { checkImageFields } from "../art/image-rules.js";
import { textArtSchema } from "../art/text-art.js";
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
      .describe("where the run goes: centre (the ribbon's line), border (the outline), or mm inside it"),
  })
  .describe("a bead run on the region");

export const regionSchema = z
  .strictObject({
    name: z
      .string()
      .min(1)
      .max(200)
      .optional()
      .describe("name used in messages and reports; default region and its number"),
    path: pathData.optional(),
    svg: z
      .string()
      .min(1)
      .max(300)
      .optional()
      .describe(
        "name of an SVG file in place of a path, looked for in the design's folder and below; all that is painted counts, whatever its colour; fill does not apply",
      ),
    shape: shapeSchema.optional().describe("a shape instead of a path: drawings combined, cut, offset or copied"),
    motif: motifSchema.optional(),
    text: textArtSchema.optional(),
    place: placeSchema.optional(),
    image: z
      .string()
      .min(1)
      .max(300)
      .optional()
      .describe(
        "name of a PNG file, a height map in place of an outline; height or depth is that between black and white; looked for in the design's folder and below",
      ),
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
        "raised on the seat, sunk into it, or pierced through the wall; what is sunk or pierced also cuts raised regions before it in the list; default raised",
      ),
    height: z
      .number()
      .positive()
      .max(10)
      .optional()
      .describe("raised only: height of a level top above the seat, mm, above 0; short for a flat section"),
    depth: z
      .number()
      .positive()
      .max(10)
      .optional()
      .describe("sunk only: depth of a level floor below the seat, mm, above 0; short for a flat section"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(PATTERN_DEFAULTS.region.round)
      .describe(
        "radius of the top edge, of a sunk region the floor's, mm; at most the height or depth and half the narrowest width; default 0",
      ),
    section: sectionSchema
      .optional()
      .describe(
        "the region cut across: flat, domed, ridge or hollow, instead of height and round; of a sunk region turned over, its height the depth",
      ),
    broken: z
      .number()
      .min(0)
      .max(2)
      .default(PATTERN_DEFAULTS.region.broken)
      .describe("pierced only: radius of the hole's edges at seat and bore, mm; it is wider by it there; default 0"),
    ...composeFields,
    beads: regionBeadsSchema.optional(),
  })
  .superRefine(checkModeFields)
  .superRefine(checkArtFields)
  .superRefine(checkImageFields)
  .meta({ id: "region" });

export type RegionSpec = z.infer<typeof regionSchema>;
