/**
 * What the document knows of a kind of shape: the field that tells it from others, and all its fields.
 */
import type { z } from "zod";

export interface ShapeKind {
  /** The field that tells it apart. */
  readonly key: string;
  /** Its fields, that one among them. Those that may be left out are optional; defaults are filled in as it is drawn. */
  fields(shape: z.ZodType): Readonly<Record<string, z.ZodType>>;
}
