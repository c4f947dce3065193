/**
 * What a cut has to tell. A new cut is one value of this shape in `cuts/` and one line in `cuts/catalogue.ts`.
 */
import type { Certainty } from "../base/certainty.js";
import type { Outline } from "./outline.js";
import type { Polyhedron } from "./polyhedron.js";
import type { CutName, Proportions, Stone } from "./stone.js";

/** The sizes of a stone, mm. */
export type StoneSize = Pick<Stone, "length" | "width" | "narrow">;

/** A published formula for weight: carats = factor × product × depth, mm. */
export interface WeightFormula {
  /** `mean²` is ((length + width) / 2)², `area` length × width. */
  readonly product: "mean²" | "area";
  /** Factor by length : width, rising; between two it is interpolated, beyond them the nearest stands. */
  readonly factors: readonly (readonly [ratio: number, factor: number])[];
  readonly source: string;
  readonly certainty: Certainty;
}

/** A cut. */
export interface Cut {
  readonly name: CutName;
  /** In tables. */
  readonly title: string;
  /** Length : width, least, usual and most. */
  readonly ratio: { readonly least: number; readonly usual: number; readonly most: number };
  /** The usual ones. */
  readonly proportions: Proportions;
  /** Where they are from. */
  readonly proportionsSource: string;
  readonly weight: {
    /** For diamonds, g/cm³ included; undefined where only the other is published. */
    readonly diamond?: WeightFormula;
    /** For all gems, to be taken times the density in g/cm³. */
    readonly coloured: WeightFormula;
  };
  readonly outline: (size: StoneSize) => Outline;
  /**
   * @param tolerance mm, of the girdle's outline and of a cabochon's dome
   * @throws CannotClose
   */
  readonly facets: (size: StoneSize, proportions: Proportions, tolerance: number) => Polyhedron;
}
