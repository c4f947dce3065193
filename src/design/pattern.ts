/**
 * The pattern's and the bead runs' part of the design document.
 */
import { z } from "zod";
import { mapSchema } from "../art/image/map.js";
import { checkImageFields } from "../art/image/rules.js";
import { motifSchema } from "../art/motifs/index.js";
import { shapeSchema } from "../art/shapes/index.js";
import { placeSchema } from "../art/svg/place.js";
import { textArtSchema } from "../art/text/text-art.js";
import { type FriezeName, friezeGroups } from "../base/frieze/symmetry.js";
import { composeFields } from "../relief/compose.js";
import { edgeSchema } from "../relief/edges/index.js";
import { RIBBON_DEFAULTS, ribbonSchema } from "../relief/ribbons/schema.js";
import { sectionSchema } from "../relief/sections/index.js";
import { checkArtFields } from "./art-rules.js";
import { checkComposition } from "./composition-rules.js";
import { cycleSchema, tilesSchema } from "./cycle.js";
import { drawingUnit, fillRule, pathData } from "./path-schema.js";
import { checkModeFields } from "./region-rules.js";

/** Defaults of the pattern; lengths in mm unless said otherwise. */
export const PATTERN_DEFAULTS = {
  fit: { repeats: "auto", rows: 1, aspect: 1, hold: "tile" },
  symmetry: "p1",
  cycle: 1,
  cover: 360,
  gap: 0.3,
  share: 1,
  region: { unit: "tile", fill: "nonzero", round: 0, mode: "raised", broken: 0 },
  ribbon: RIBBON_DEFAULTS,
  bead: { pitch: 1.05, embed: 0.5, corners: "pass", cornerAngle: 30, junctions: "leave" },
} as const;

const friezeNames = friezeGroups.map((group) => group.name) as [FriezeName, ...FriezeName[]];

const lengthUnit = drawingUnit
  .default(PATTERN_DEFAULTS.region.unit)
  .describe(
    "unit of the path, of the shape or of the drawing's place: tile (a tile is 1 wide and `aspect` high) or mm; default tile",
  );

const beadDiameter = z.number().min(0.1).max(5);

const beadSize = {
  diameter: beadDiameter.describe("bead diameter, mm, 0.1 to 5; milgrain is usually 0.3 to 0.6"),
  to: beadDiameter
    .optional()
    .describe(
      "diameter that the run grows or shrinks to, mm, 0.1 to 5: at the end of an open line as drawn, half way round one that closes; default one size",
    ),
  alternate: beadDiameter
    .optional()
    .describe("diameter of every second bead, mm, 0.1 to 5; not together with `to`; default one size"),
  pitch: z
    .number()
    .min(0.5)
    .max(20)
    .optional()
    .describe("wanted spacing over diameter, 0.5 to 20; default 1.05; the real one is the nearest that closes evenly"),
  count: z.int().min(1).optional().describe("exact number of beads in each run, instead of a pitch"),
  embed: z
    .number()
    .min(0.1)
    .max(0.9)
    .default(PATTERN_DEFAULTS.bead.embed)
    .describe("share of the diameter below the surface that carries the bead, 0.1 to 0.9; default 0.5"),
  corners: z
    .enum(["pass", "on", "split"])
    .optional()
    .describe(
      "corners of the line: pass (beads take no notice), on (a bead on each), split (equal gaps on both sides of each); default pass",
    ),
  cornerAngle: z
    .number()
    .min(5)
    .max(175)
    .optional()
    .describe("a corner is where the line turns by more than this, degrees, 5 to 175; default 30"),
  junctions: z
    .enum(["leave", "share"])
    .optional()
    .describe(
      "where the run meets or crosses a run that shares too, or another's end lies on it: leave, or share one bead there; default leave",
    ),
};

const regionBeadsSchema = z
  .strictObject({
    ...beadSize,
    on: z
      .union([z.enum(["centre", "border"]), z.number().min(0).max(50)])
      .default("centre")
      .describe(
        "where the run goes: centre (the ribbon's centre line), border (the outline), or mm inside the outline",
      ),
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
        "name of an SVG file instead of a path; the command line looks in the design's folder and below; all that is painted counts as art, whatever its colour; fill does not apply",
      ),
    shape: shapeSchema
      .optional()
      .describe("a shape instead of a path: drawings combined, cut, offset or copied before symmetry completes them"),
    motif: motifSchema.optional(),
    text: textArtSchema.optional(),
    place: placeSchema.optional(),
    image: z
      .string()
      .min(1)
      .max(300)
      .optional()
      .describe(
        "name of a PNG file as a height map instead of an outline; height, or depth of a sunk one, is that between black and white; the command line looks in the design's folder and below",
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
        "raised on the seat, sunk into it, or pierced through the wall; what is sunk or pierced also cuts the raised regions before it in the list, not those after it; default raised",
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
        "radius of the rounded top edge, of a sunk region the floor's edge, mm; at most the height or depth and half the narrowest width; default 0",
      ),
    section: sectionSchema
      .optional()
      .describe(
        "what the region looks like cut across: flat, domed, ridge or hollow, instead of height and round; of a sunk region it is turned over, and its height is the depth",
      ),
    broken: z
      .number()
      .min(0)
      .max(2)
      .default(PATTERN_DEFAULTS.region.broken)
      .describe(
        "pierced only: radius that breaks the hole's edges at the seat and at the bore, mm; the hole is wider by it there; default 0",
      ),
    ...composeFields,
    beads: regionBeadsSchema.optional(),
  })
  .superRefine(checkModeFields)
  .superRefine(checkArtFields)
  .superRefine(checkImageFields);

export const fitSchema = z.strictObject({
  repeats: z
    .union([z.literal("auto"), z.int().min(1).max(1000)])
    .default(PATTERN_DEFAULTS.fit.repeats)
    .describe("tiles around the band: auto (the number nearest to the drawn band) or 1 to 1000; default auto"),
  rows: z.int().min(1).max(50).default(PATTERN_DEFAULTS.fit.rows).describe("rows of tiles across the band; default 1"),
  aspect: z
    .number()
    .min(0.05)
    .max(20)
    .default(PATTERN_DEFAULTS.fit.aspect)
    .describe("height of a tile over its width, 0.05 to 20; default 1 (square)"),
  hold: z
    .enum(["tile", "band"])
    .default(PATTERN_DEFAULTS.fit.hold)
    .describe(
      "tile: the tile keeps its aspect and the band's width follows; band: the band stays and the tile stretches; default tile",
    ),
});

const symmetry = z.enum(friezeNames).default(PATTERN_DEFAULTS.symmetry);
const regions = z.array(regionSchema).max(500);

/** Most tiles that a medallion or an ornament may be wide. */
const MAX_WIDE = 500;

const medallionSchema = z
  .strictObject({
    tiles: z.int().min(1).max(MAX_WIDE).describe("tiles that it takes the place of, 1 to 500"),
    symmetry: symmetry.describe("frieze group that completes what is drawn in it; default p1"),
    regions: regions.describe("what is drawn in it, once: it is one tile of its own, 1 wide and as high as the rows"),
  })
  .describe("takes the place of some tiles at the top of the ring, with art of its own that is not repeated");

const stopLineSchema = z
  .strictObject({
    form: z.literal("line"),
    width: z.number().min(0.1).max(10).describe("width of the line, mm, 0.1 to 10; its outer side is the end"),
    height: z.number().positive().max(10).describe("height above the seat, mm, above 0"),
    round: z.number().min(0).max(5).default(0).describe("radius of its rounded top edges, mm; default 0"),
  })
  .describe("a line across the seat");

const endsSchema = z
  .discriminatedUnion("form", [
    z.strictObject({ form: z.literal("cut") }).describe("cut off straight"),
    stopLineSchema,
    z
      .strictObject({
        form: z.literal("fade"),
        length: z.number().min(0.2).max(50).describe("mm from the end over which the relief sinks to the seat"),
      })
      .describe("sinks into the seat; what is pierced is cut off, beads keep clear"),
    z
      .strictObject({
        form: z.literal("ornament"),
        tiles: z.int().min(1).max(MAX_WIDE).default(1).describe("its width in tiles, 1 to 500; default 1"),
        symmetry: symmetry.describe("frieze group that completes what is drawn in it; default p1"),
        regions: regions.describe(
          "what is drawn beyond the end, x = 0 at the end, 1 away from it: one tile of its own; the other end mirrors it",
        ),
      })
      .describe("art beyond each end of a pattern with a cover under 360"),
  ])
  .describe("how the pattern ends beside its plain zone and its medallion; default cut");

const parts = {
  symmetry: symmetry.describe("frieze group by IUC name that completes what is drawn; default p1"),
  cycle: cycleSchema.default(PATTERN_DEFAULTS.cycle),
  regions: regions.default([]).describe("what is drawn in the tile"),
  medallion: medallionSchema.optional(),
  ends: endsSchema.optional(),
};

const laneSchema = z.strictObject({
  name: z
    .string()
    .min(1)
    .max(200)
    .optional()
    .describe("name used in messages and reports; default lane and its number"),
  share: z
    .number()
    .min(0.01)
    .max(100)
    .default(PATTERN_DEFAULTS.share)
    .describe("its share of the seat against the other lanes', 0.01 to 100; default 1"),
  fit: fitSchema.omit({ hold: true }).prefault({}).describe("how many of its tiles go round"),
  ...parts,
});

export const patternSchema = z
  .strictObject({
    fit: fitSchema.prefault({}).describe("how many tiles go round and what gives way"),
    cover: z
      .number()
      .min(5)
      .max(360)
      .default(PATTERN_DEFAULTS.cover)
      .describe("degrees of the band that carry the pattern, centred on the top, 5 to 360; default 360"),
    shapes: z
      .record(z.string().min(1).max(200), shapeSchema)
      .optional()
      .describe('shapes by name, which regions and other shapes take as {"shape": name}; default none'),
    ...parts,
    lanes: z
      .array(laneSchema)
      .min(2)
      .max(20)
      .optional()
      .describe(
        "patterns side by side across the seat, the lowest (towards -z) first, 2 to 20, in place of the pattern's own art; cover, shapes, gap and fit.hold are common to them; default one pattern",
      ),
    gap: z
      .number()
      .min(0)
      .max(20)
      .default(PATTERN_DEFAULTS.gap)
      .describe("plain seat between neighbouring lanes, mm, 0 to 20; default 0.3"),
  })
  .superRefine(checkComposition);

const runLane = z
  .string()
  .max(200)
  .optional()
  .describe("name of the lane in whose tiles it is drawn; default the first, the lowest");

/** A bead run of its own: along a rail, a seat edge, a circle at v, or a path or shape in the tile. */
export const beadRunSchema = z.strictObject({
  along: z
    .union([
      z.enum(["rail", "seat-edge"]),
      z.strictObject({ v: z.number().min(-50).max(50).describe("mm across the seat from its middle, + towards +z") }),
      z.strictObject({ path: pathData, unit: lengthUnit, tiles: tilesSchema.optional(), lane: runLane }),
      z.strictObject({
        shape: shapeSchema.describe("a shape whose outlines and lines carry beads"),
        unit: lengthUnit,
        tiles: tilesSchema.optional(),
        lane: runLane,
      }),
    ])
    .describe(
      "rail (both rails' tops), seat-edge (both edges of the seat), {v} (a circle round the band), or {path} or {shape} in every tile (a shape's outlines and lines)",
    ),
  ...beadSize,
  inset: z
    .number()
    .min(0)
    .max(20)
    .optional()
    .describe("seat-edge only: mm from the seat's edge to the beads' centres; default 0.45 diameters"),
  height: z
    .number()
    .min(0)
    .max(10)
    .default(0)
    .describe("mm above the seat of the surface that carries the beads; default 0"),
});

export type FitSpec = z.infer<typeof fitSchema>;
export type PatternSpec = z.infer<typeof patternSchema>;
export type EndsSpec = z.infer<typeof endsSchema>;
export type RegionSpec = z.infer<typeof regionSchema>;
export type BeadRunSpec = z.infer<typeof beadRunSchema>;
export type RegionBeadsSpec = z.infer<typeof regionBeadsSchema>;
