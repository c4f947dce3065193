/**
 * What the document and its readers know of a motif: everything but how it is drawn.
 */
import type { z } from "zod";
import type { FriezeName } from "../../base/frieze/symmetry.js";

/** The ribbon that a motif of lines is meant for. */
export interface MotifRibbon {
  /** Width over the tile width. */
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

export interface MotifFacts {
  /** By which documents call it: kebab-case, plain words. */
  readonly name: string;
  /** One line for lists and the document's reference: what one sees. */
  readonly summary: string;
  /** The frieze group of the finished strip: the richest for which it may be used. */
  readonly group: FriezeName;
  /** Of lines that cross: the richest group under which they may be woven, in words by the parameters. No mirror can be. */
  readonly woven?: string;
  readonly aspect: MotifAspects;
  /** What its lines are meant for; left out where the motif is filled. */
  readonly ribbon?: MotifRibbon;
  /** Each made by `share`, `angle` or `count`, so that it has a range, a default and a description of both. */
  readonly parameters: z.ZodObject<z.core.$ZodLooseShape, z.core.$strict>;
}

/** The parameters of a motif as a document gives them, every default filled in. */
export type MotifParameters<Facts extends MotifFacts> = z.output<Facts["parameters"]>;
