/** The catalogue of shapes, as they are drawn. A new kind is a file here and its two lines; its fields stand in design/shapes. */

import type { ShapeKey } from "../../design/shapes/shape.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import type { DrawnPaths } from "../read-art.js";
import { differenceShape } from "./difference.js";
import { glideShape } from "./glide.js";
import { intersectionShape } from "./intersection.js";
import { latticeShape } from "./lattice.js";
import { mirrorShape } from "./mirror.js";
import { motifLeaf } from "./motif-leaf.js";
import { namedShape } from "./named.js";
import { offsetShape } from "./offset.js";
import { pathLeaf } from "./path-leaf.js";
import type { ShapeFrame, ShapeNode } from "./shape-node.js";
import { svgLeaf } from "./svg-leaf.js";
import { trimShape } from "./trim.js";
import { turnsShape } from "./turns.js";
import { unionShape } from "./union.js";

/** Every kind, by the field that tells it apart. */
const SHAPE_NODES: {
  readonly [Key in ShapeKey]: ShapeNode<Extract<ShapeSpec, Readonly<Record<Key, unknown>>>>;
} = {
  path: pathLeaf,
  svg: svgLeaf,
  motif: motifLeaf,
  shape: namedShape,
  union: unionShape,
  intersection: intersectionShape,
  difference: differenceShape,
  offset: offsetShape,
  trim: trimShape,
  turns: turnsShape,
  mirror: mirrorShape,
  glide: glideShape,
  lattice: latticeShape,
};

const keys = Object.keys(SHAPE_NODES) as ShapeKey[];

/** Draws a shape of any kind. */
export function drawNode(spec: ShapeSpec, frame: ShapeFrame): DrawnPaths {
  const key = keys.find((one) => one in spec && spec[one as keyof ShapeSpec] !== undefined) as ShapeKey;
  const node: ShapeNode<never> = SHAPE_NODES[key];
  return node.draw(spec as never, frame);
}
