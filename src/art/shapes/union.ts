/**
 * Everything that any of the shapes covers, and all their lines.
 */
import { unite } from "../../flat/polygons.js";
import { type ShapeNode, shapeList } from "./shape-node.js";
import type { ShapeSpec } from "./shape-spec.js";

export interface UnionShape {
  readonly union: readonly ShapeSpec[];
}

export const unionShape: ShapeNode<UnionShape> = {
  key: "union",
  fields: (shape) => ({ union: shapeList(shape, 1).describe("shapes that become one, 1 to 200") }),
  draw({ union }, { draw, budget, where }) {
    const parts = union.map((part, i) => draw(part, `.union[${i}]`));
    const rings = parts.flatMap(({ closed }) => closed);
    budget.spendUnion(rings, where);
    return { closed: unite(rings), open: parts.flatMap(({ open }) => open) };
  },
};
