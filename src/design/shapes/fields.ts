/**
 * The fields that several kinds of shapes share.
 */
import { z } from "zod";
import type { Point2 } from "../../base/math/point.js";
import { drawingUnit } from "../path-schema.js";

const coordinate = z.number().min(-1000).max(1000);

/** x and y in the region's unit. */
export const pointField = z.tuple([coordinate, coordinate]).meta({ id: "point" });

/** Two points of a line. */
export type AxisPoints = readonly [Point2, Point2];

export const axisField = z
  .tuple([pointField, pointField])
  .refine(([a, b]) => a[0] !== b[0] || a[1] !== b[1], "needs two points that differ")
  .meta({ id: "line" });

/** Most shapes in one list. Chosen: above any hand-made design. */
const MAX_OPERANDS = 200;

/** A list of shapes. */
export function shapeList(shape: z.ZodType, least: number) {
  return z.array(shape).min(least).max(MAX_OPERANDS);
}

/** The field that holds what a shape is done to. */
export function ofField(shape: z.ZodType) {
  return shape.describe("the shape it is done to");
}

/** Unit of one leaf. */
export const unitField = drawingUnit.optional().describe("of this path or place; default the region's unit");
