/**
 * What a motif is: a drawing in one tile, made by rule from a few numbers.
 *
 * It is drawn whole: the translations alone complete it to what its frieze group would.
 */
import type { z } from "zod";
import type { FriezeName } from "../../base/frieze/symmetry.js";
import type { ShapeSpec } from "../shapes/shape-spec.js";

/** What a motif may know of the tile that it is drawn in: x runs from 0 to 1, y over ± half of `aspect`. */
export interface MotifFrame {
  /** Height of the tile over its width. */
  readonly aspect: number;
}

/** The ribbon that a motif of lines is meant for. */
export interface MotifRibbon {
  /** Width, share of the tile's width. */
  readonly share: number;
  readonly join: "miter" | "round";
  readonly ends: "butt" | "round" | "square";
}

/** Heights of a tile over its width. */
export interface MotifAspects {
  readonly natural: number;
  /** The motif keeps its details from here … */
  readonly least: number;
  /** … to here. */
  readonly most: number;
}

/** A motif of the catalogue. */
export interface Motif<Fields extends z.core.$ZodLooseShape = z.core.$ZodLooseShape> {
  /** By which documents call it: kebab-case, plain words. */
  readonly name: string;
  /** One line for lists and the document's reference: what one sees. */
  readonly summary: string;
  /** The frieze group of the finished strip: the richest for which it may be used. */
  readonly group: FriezeName;
  readonly aspect: MotifAspects;
  /** What its lines are meant for; left out where the motif is filled. */
  readonly ribbon?: MotifRibbon;
  /** Each made by `share`, `angle` or `count`, so that it has a range, a default and a description of both. */
  readonly parameters: z.ZodObject<Fields, z.core.$strict>;
  /** The motif as a shape, in tile units. */
  draw(parameters: z.output<z.ZodObject<Fields, z.core.$strict>>, frame: MotifFrame): ShapeSpec;
}

/** A motif whose parameters are checked where they are read. */
export interface AnyMotif extends Omit<Motif, "draw"> {
  draw(parameters: never, frame: MotifFrame): ShapeSpec;
}

/** Narrowest line and gap that motifs keep over the whole range of their parameters and aspects, share of the tile's width: 0.3 mm in a tile of 6 mm, the least that casts and polishes (common practice, no source). */
export const LEAST_DETAIL = 0.05;
