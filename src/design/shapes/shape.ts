/**
 * The document's shapes. A new kind is a file beside this, its type in shape-spec.ts and its two lines here.
 *
 * Their schema is one object with the fields of all kinds and a rule (`rules.ts`), not a union: a union would try every
 * kind on all that is nested, and take exponential time to refuse.
 */
import { z } from "zod";
import { differenceKind } from "./difference.js";
import { glideKind } from "./glide.js";
import { intersectionKind } from "./intersection.js";
import type { ShapeKind } from "./kind.js";
import { latticeKind } from "./lattice.js";
import { mirrorKind } from "./mirror.js";
import { motifKind } from "./motif-leaf.js";
import { namedKind } from "./named.js";
import { offsetKind } from "./offset.js";
import { pathKind } from "./path-leaf.js";
import { checkNode } from "./rules.js";
import type { ShapeSpec } from "./shape-spec.js";
import { svgKind } from "./svg-leaf.js";
import { trimKind } from "./trim.js";
import { turnsKind } from "./turns.js";
import { unionKind } from "./union.js";

/** Every kind. */
const SHAPE_KINDS = [
  pathKind,
  svgKind,
  motifKind,
  namedKind,
  unionKind,
  intersectionKind,
  differenceKind,
  offsetKind,
  trimKind,
  turnsKind,
  mirrorKind,
  glideKind,
  latticeKind,
] as const satisfies readonly ShapeKind[];

/** The fields that tell the kinds apart. */
export type ShapeKey = (typeof SHAPE_KINDS)[number]["key"];

/** A shape inside a shape. */
const inner: z.ZodType<ShapeSpec, ShapeSpec> = z.lazy(() => shapeSchema);

const kinds = SHAPE_KINDS.map((kind: ShapeKind) => ({ key: kind.key, fields: kind.fields(inner) }));

const rules = kinds.map(({ key, fields }) => ({
  key,
  fields: Object.keys(fields),
  required: Object.keys(fields).filter((name) => !(fields[name] instanceof z.ZodOptional)),
}));

const allFields = Object.fromEntries(
  kinds.flatMap(({ fields }) => Object.entries(fields).map(([name, field]) => [name, field.optional()])),
);

/**
 * A shape of any kind. One object with the fields of all, not a union of objects: a union would try every kind on what
 * lies inside, and all kinds on what lies inside that, before it says what is wrong.
 */
export const shapeSchema = z
  .strictObject(allFields)
  .superRefine((value, context) => checkNode(rules, value, context))
  .meta({
    id: "shape",
    description: "a drawing, or shapes combined, copied",
    oneOf: rules.map(({ required }) => ({ required })),
  }) as unknown as z.ZodType<ShapeSpec, ShapeSpec>;
