/**
 * A bead run of its own: along a rail, a seat edge, a circle at v, or a path or shape in the tile.
 */
import { z } from "zod";
import { tilesSchema } from "../cycle.js";
import { pathData } from "../path-schema.js";
import { shapeSchema } from "../shapes/shape.js";
import { beadSize } from "./bead-fields.js";
import { lengthUnit } from "./common.js";

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
      "rail (both rails' tops), seat-edge (both edges of the seat), {v} (a circle round the band), {path} or {shape} (its outlines and lines) in every tile",
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

export type BeadRunSpec = z.infer<typeof beadRunSchema>;
