/**
 * Everything that any of the shapes covers, and all their lines.
 */

import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import type { UnionShape } from "../../design/shapes/union.js";
import { unite } from "../../flat/polygons.js";
import type { ShapeNode } from "./shape-node.js";

export const unionShape: ShapeNode<UnionShape<ShapeSpec>> = {
  draw({ union }, { draw, budget, where }) {
    const parts = union.map((part, i) => draw(part, `.union[${i}]`));
    const rings = parts.flatMap(({ closed }) => closed);
    budget.spendUnion(rings, where);
    return { closed: unite(rings), open: parts.flatMap(({ open }) => open) };
  },
};
