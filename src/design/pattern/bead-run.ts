/**
 * A bead run of its own: along a rail, a seat edge, a step, a circle at v, or a path or shape in the tile.
 */
import { z } from "zod";
import { tilesSchema } from "../cycle.js";
import { pathData } from "../path-schema.js";
import { shapeSchema } from "../shapes/shape.js";
import { beadSize } from "./bead-fields.js";
import { lengthUnit } from "./common.js";

const runLane = z.string().max(200).optional().describe("lane it is drawn in; default the lowest");

/** A bead run of its own: along a rail, a seat edge, a circle at v, or a path or shape in the tile. */
export const beadRunSchema = z.strictObject({
  along: z
    .union([
      z.enum(["rail", "seat-edge", "step"]),
      z.strictObject({
        v: z
          .number()
          .min(-50)
          .max(50)
          .describe("mm from the seat's middle along its section, arc length and not w; + towards +z"),
      }),
      z.strictObject({ path: pathData, unit: lengthUnit, tiles: tilesSchema.optional(), lane: runLane }),
      z.strictObject({
        shape: shapeSchema.describe("its outlines and lines carry beads"),
        unit: lengthUnit,
        tiles: tilesSchema.optional(),
        lane: runLane,
      }),
    ])
    .describe(
      "rail (both tops), seat-edge (both edges), step (both ledges), {v} (a circle round the band), {path} or {shape} in every tile",
    ),
  ...beadSize,
  over: z
    .enum(["band", "cover"])
    .optional()
    .describe("rail, seat-edge, step, {v}: all round the band, or over the pattern's cover alone; default band"),
  inset: z
    .number()
    .min(0)
    .max(20)
    .optional()
    .describe("seat-edge: mm from it to the beads' centres; default 0.45 diameters"),
  height: z.number().min(0).max(10).default(0).describe("height under the beads, mm above the seat; default 0"),
});

export type BeadRunSpec = z.infer<typeof beadRunSchema>;
