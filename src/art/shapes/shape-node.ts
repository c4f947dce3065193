/**
 * What a kind of shape is: the field that tells it from others, its part of the document, and how it is drawn.
 */
import { z } from "zod";
import type { Warn } from "../../base/errors.js";
import type { DrawingUnit } from "../../design/path-schema.js";
import type { Strip } from "../../flat/strip.js";
import type { DrawnPaths } from "../read-art.js";
import type { Drawing } from "../svg/drawing.js";
import type { Budget } from "./budget.js";
import type { ShapeSpec } from "./shape-spec.js";

/** What a shape is drawn in. */
export interface ShapeFrame {
  readonly strip: Strip;
  /** Unit of coordinates. */
  readonly unit: DrawingUnit;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** The node's place in the document, for errors. */
  readonly where: string;
  /** The place of something inside the node: `.union[2]`. What a motif drew stands at the motif's own place. */
  place(inner: string): string;
  /** What has been drawn so far, against its limits. */
  readonly budget: Budget;
  readonly warn: Warn;
  /** The SVG files that shapes name, by name. */
  readonly drawings: ReadonlyMap<string, Drawing>;
  /** Draws an inner shape; `inner` is its place inside the node. */
  draw(spec: ShapeSpec, inner: string): DrawnPaths;
  /** Draws what a motif made, in tile units. */
  drawGenerated(spec: ShapeSpec): DrawnPaths;
  /** Draws the shape that the pattern has under a name. */
  drawNamed(name: string): DrawnPaths;
}

/** A kind of shape. What it draws: closed rings united, outer ones counter-clockwise, holes clockwise; lines as they are. */
export interface ShapeNode<Spec> {
  /** The field that tells it apart. */
  readonly key: string;
  /** Its fields, that one among them. Those that may be left out are optional; defaults are filled in as it is drawn. */
  fields(shape: z.ZodType<ShapeSpec, ShapeSpec>): Readonly<Record<string, z.ZodType>>;
  draw(spec: Spec, frame: ShapeFrame): DrawnPaths;
}

/** Most shapes in one list. Chosen: above any hand-made design. */
const MAX_OPERANDS = 200;

/** A list of shapes. */
export function shapeList(shape: z.ZodType<ShapeSpec, ShapeSpec>, least: number): z.ZodType<readonly ShapeSpec[]> {
  return z.array(shape).min(least).max(MAX_OPERANDS);
}

/** The field that holds what a node works on. */
export function ofField(shape: z.ZodType<ShapeSpec, ShapeSpec>): z.ZodType<ShapeSpec> {
  return shape.describe("the shape that it is done to");
}

const coordinate = z.number().min(-1000).max(1000);

/** x and y in the region's unit. */
export const pointField = z.tuple([coordinate, coordinate]);
