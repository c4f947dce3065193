/** The catalogue of shapes' kinds. A new one is a file here, its spec in shape-spec.ts and its line in the list. */
import { z } from "zod";
import type { DrawnPaths } from "../read-art.js";
import { differenceShape } from "./difference.js";
import { glideShape } from "./glide.js";
import { intersectionShape } from "./intersection.js";
import { latticeShape } from "./lattice.js";
import { mirrorShape } from "./mirror.js";
import { motifLeaf } from "./motif-leaf.js";
import { namedShape } from "./named.js";
import { checkNode } from "./node-rules.js";
import { offsetShape } from "./offset.js";
import { pathLeaf } from "./path-leaf.js";
import type { ShapeFrame, ShapeNode } from "./shape-node.js";
import type { ShapeSpec } from "./shape-spec.js";
import { svgLeaf } from "./svg-leaf.js";
import { trimShape } from "./trim.js";
import { turnsShape } from "./turns.js";
import { unionShape } from "./union.js";

/** Every kind, by the field that tells it apart. */
export const SHAPE_NODES: readonly ShapeNode<never>[] = [
  pathLeaf,
  svgLeaf,
  motifLeaf,
  namedShape,
  unionShape,
  intersectionShape,
  differenceShape,
  offsetShape,
  trimShape,
  turnsShape,
  mirrorShape,
  glideShape,
  latticeShape,
];

/** A shape inside a shape. */
const inner: z.ZodType<ShapeSpec, ShapeSpec> = z.lazy(() => shapeSchema);

const kinds = SHAPE_NODES.map((node) => ({ key: node.key, fields: node.fields(inner) }));

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
    description: `a shape: a drawing, or shapes combined or copied; exactly one of ${rules.map(({ key }) => key).join(", ")}`,
    oneOf: rules.map(({ required }) => ({ required })),
  }) as unknown as z.ZodType<ShapeSpec, ShapeSpec>;

/** Draws a shape of any kind. */
export function drawNode(spec: ShapeSpec, frame: ShapeFrame): DrawnPaths {
  const node = SHAPE_NODES.find(({ key }) => key in spec && spec[key as keyof ShapeSpec] !== undefined);
  return (node as ShapeNode<never>).draw(spec as never, frame);
}
