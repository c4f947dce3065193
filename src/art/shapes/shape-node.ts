/**
 * What a kind of shape is drawn in, and how.
 */

import type { Warn } from "../../base/errors.js";
import type { DrawingUnit } from "../../design/path-schema.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import type { Strip } from "../../flat/strip.js";
import type { DrawnPaths } from "../read-art.js";
import type { Drawing } from "../svg/drawing.js";
import type { Budget } from "./budget.js";

/** What a shape is drawn in. */
export interface ShapeFrame {
  readonly strip: Strip;
  /** Unit of coordinates. */
  readonly unit: DrawingUnit;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** The node's place in the document, for errors. */
  readonly where: string;
  /** Whether it may leave the tile across, beneath the rails. */
  readonly beneath: boolean;
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
  draw(spec: Spec, frame: ShapeFrame): DrawnPaths;
}
