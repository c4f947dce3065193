/**
 * What is known of a variant before it is made: how its pattern fits, and its weight by the drawing.
 */
import type { Fit } from "../../band/fit/fit.js";
import type { FigureName } from "../plan/plan-schema.js";
import type { StoneFigures } from "./known-stones.js";

/** Lengths in mm. What a design has not, such as a fit without a pattern, is null. */
export interface KnownFigures extends StoneFigures {
  readonly repeats: number | null;
  readonly rows: number | null;
  readonly tileWidth: number | null;
  readonly tileHeight: number | null;
  readonly bandWidth: number;
  /** Of a tile across the band: 1 is none. */
  readonly stretch: number | null;
  /** Width of the rails as drawn. */
  readonly rail: number | null;
  /** Of the finished ring's metal, mm³ and g: an estimate, see `estimate-volume.ts`. */
  readonly volume: number;
  readonly weight: number;
  /** Symbol of what it is weighed in. */
  readonly material: string;
}

/** Figures of the fit; a pattern in lanes is told by its first. */
export function fitFigures(fit: Fit | undefined) {
  if (fit === undefined) return { repeats: null, rows: null, tileWidth: null, tileHeight: null, stretch: null };
  const { repeats, rows, tileWidth, tileHeight, stretch } = fit;
  return { repeats, rows, tileWidth, tileHeight, stretch };
}

/** A figure as filters compare it; undefined where the variant has none, and for those that are not known at once. */
export function figureOf(figures: KnownFigures, name: FigureName): number | undefined {
  if (name === "beadRatio") return undefined;
  const figure = figures[name] ?? undefined;
  return name === "stretch" && figure !== undefined ? Math.abs(figure - 1) : figure;
}
