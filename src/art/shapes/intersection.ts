/**
 * What all the shapes cover together. Lines of the first are kept as far as they lie in all the others.
 */
import { clipLinesTo, intersect } from "../../flat/polygons.js";
import type { DrawnPaths } from "../read-art.js";
import { requireRegion, requireSomething } from "./rules.js";
import { type ShapeNode, shapeList } from "./shape-node.js";
import type { ShapeSpec } from "./shape-spec.js";

export interface IntersectionShape {
  readonly intersection: readonly ShapeSpec[];
}

export const intersectionShape: ShapeNode<IntersectionShape> = {
  key: "intersection",
  fields: (shape) => ({
    intersection: shapeList(shape, 2).describe(
      "what all these shapes cover together, 2 to 200; the first may be lines, kept as far as they lie in the others",
    ),
  }),
  draw({ intersection }, frame) {
    const [first, ...others] = intersection.map((part, i) => frame.draw(part, `.intersection[${i}]`));
    const left = others.reduce((kept: DrawnPaths, other, i) => {
      requireRegion(other, frame.place(`.intersection[${i + 1}]`), "holds nothing");
      frame.budget.spendUnion([...kept.closed, ...kept.open, ...other.closed], frame.where);
      return {
        closed: intersect(kept.closed, other.closed),
        open: clipLinesTo(kept.open, other.closed, "inside"),
      };
    }, first);
    return requireSomething(left, frame.place(".intersection"), "the shapes have nothing in common");
  },
};
