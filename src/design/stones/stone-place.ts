/**
 * Where the stones of a group stand: anchors or lines in the tile, rows round the band, or one at an angle.
 */
import { z } from "zod";
import { tilesSchema } from "../cycle.js";
import { pathData } from "../path-schema.js";
import { lengthUnit } from "../pattern/common.js";
import { shapeSchema } from "../shapes/shape.js";
import { stoneLength } from "./stone-length.js";

/** Clear gap between girdles, mm: gia.edu benchmark; stuller.com, "Techniques for channel setting". */
export const GAP_DEFAULT = 0.1;

const turn = z
  .number()
  .min(-180)
  .max(180)
  .default(0)
  .describe("turned about its own axis, degrees counter-clockwise from outside, -180 to 180; default 0");

const angle = z.number().min(-360).max(360);

const across = z.number().min(-50).max(50);

/** In every tile, or some of them. */
const inTile = {
  unit: lengthUnit,
  tiles: tilesSchema.optional(),
  lane: z.string().max(200).optional().describe("lane it is drawn in; default the lowest"),
};

/** One after another. */
const inRow = {
  gap: z
    .number()
    .min(0)
    .max(50)
    .optional()
    .describe("clear between girdles in space, mm, 0 to 50, the nearest above that comes out even; default 0.1"),
  count: z.int().min(1).max(5000).optional().describe("how many, instead of a gap, 1 to 5000"),
  to: stoneLength
    .optional()
    .describe("size at an open row's ends, half way round one all round, mm, 0.3 to 30; default one size"),
  turn,
};

const tilePlace = z.strictObject({
  form: z.literal("tile"),
  at: z
    .tuple([z.number(), z.number()])
    .describe("[x, y] in the tile: x along the band, y from its middle towards +z; the symmetry completes it"),
  ...inTile,
  turn,
});

const linePlace = z.strictObject({
  form: z.literal("line"),
  path: pathData.optional(),
  shape: shapeSchema.optional().describe("its outlines and lines carry stones; instead of a path"),
  ...inTile,
  ...inRow,
});

const rowPlace = z.strictObject({
  form: z.literal("row"),
  along: z
    .union([
      z.enum(["middle", "rail"]),
      z.strictObject({ v: across.describe("mm from the seat's middle, + towards +z") }),
    ])
    .default("middle")
    .describe("middle (of the seat), rail (both tops) or {v}; default middle"),
  over: z
    .union([
      z.enum(["round", "cover"]),
      z.strictObject({
        from: angle.describe("angle of its first stone, degrees, the top is 90, -360 to 360"),
        to: angle.describe("angle of its last one, degrees, more than the first, -360 to 360"),
      }),
    ])
    .default("round")
    .describe("round, cover (the pattern's) or {from, to}; default round"),
  ...inRow,
});

const singlePlace = z.strictObject({
  form: z.literal("single"),
  angle: angle.default(90).describe("degrees, the top is 90, -360 to 360; default 90"),
  v: across.default(0).describe("mm from the seat's middle, + towards +z, -50 to 50; default 0"),
  turn,
});

export const stonePlaceSchema = z
  .discriminatedUnion("form", [tilePlace, linePlace, rowPlace, singlePlace])
  .describe("where they stand");

export type StonePlaceSpec = z.output<typeof stonePlaceSchema>;
/** One form of a place. */
export type StonePlaceOf<Form extends StonePlaceSpec["form"]> = Extract<StonePlaceSpec, { form: Form }>;
