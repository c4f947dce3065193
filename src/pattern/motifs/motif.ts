/**
 * What a motif is: a drawing in one tile, made by rule from a few numbers.
 */
import type { z } from "zod";
import type { ShapeSpec } from "../shapes/shape-spec.js";

/** What a motif may know of the tile that it is drawn in: x runs from 0 to 1, y over ± half of `aspect`. */
export interface MotifFrame {
  /** Height of the tile over its width. */
  readonly aspect: number;
}

/** A motif of the catalogue. */
export interface Motif<Fields extends z.core.$ZodLooseShape = z.core.$ZodLooseShape> {
  /** By which documents call it: kebab-case, plain words. */
  readonly name: string;
  /** One line for lists and the document's reference. */
  readonly summary: string;
  /** Each with its range, its default and a description that says both and the unit. */
  readonly parameters: z.ZodObject<Fields, z.core.$strict>;
  /** The motif as a shape, in tile units. */
  draw(parameters: z.output<z.ZodObject<Fields, z.core.$strict>>, frame: MotifFrame): ShapeSpec;
}

/** A motif whose parameters are checked where they are read. */
export interface AnyMotif extends Omit<Motif, "draw"> {
  draw(parameters: never, frame: MotifFrame): ShapeSpec;
}
