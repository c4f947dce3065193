/**
 * What an SVG file draws, as exact curves: each painted shape with its map to the page, its stroke and its clips.
 */
import type { Affine } from "../../base/math/affine.js";
import type { Subpath } from "../../base/math/path-data.js";
import type { Box } from "./viewport.js";

export type FillRule = "nonzero" | "evenodd";

export interface Stroke {
  /** Width in the shape's own coordinates, above 0. */
  readonly width: number;
  readonly cap: "butt" | "round" | "square";
  readonly join: "miter" | "round" | "bevel";
  /** Longest miter over the width, at least 1. */
  readonly miterLimit: number;
  /** Dashes, where it is not solid. */
  readonly dashes?: Dashes | undefined;
}

/** Dashes in the shape's own coordinates. */
export interface Dashes {
  /** Dashes and gaps in turn, an even number of them, at least 0, not all 0. */
  readonly lengths: readonly number[];
  /** How far into them a line begins. */
  readonly offset: number;
  /** What the lengths take the whole path's length for; undefined for the true one. */
  readonly pathLength: number | undefined;
}

/** A shape in its own coordinates. */
export interface DrawnShape {
  readonly subpaths: readonly Subpath[];
  /** From the shape's coordinates to the page, px. */
  readonly map: Affine;
  /** The rule that fills it; undefined where only its stroke is painted. */
  readonly fill: FillRule | undefined;
  readonly stroke: Stroke | undefined;
  /** What shows is inside all of these. */
  readonly clips: readonly Clip[];
  /** In a mask: what it covers is taken away from the shapes before it. */
  readonly hides?: boolean;
  /** The element, for messages. */
  readonly what: string;
}

/** A clip path, a mask, or the edge of a viewport: what is inside any of its shapes, and inside its own clips. */
export interface Clip {
  readonly shapes: readonly DrawnShape[];
  readonly clips: readonly Clip[];
}

export interface Drawing {
  /** Name of the file. */
  readonly name: string;
  /** The page, px: the outermost viewport. Undefined where the file names neither size nor viewBox. */
  readonly page: Box | undefined;
  readonly shapes: readonly DrawnShape[];
}
