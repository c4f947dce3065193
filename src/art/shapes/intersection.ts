/**
 * What all the shapes cover together. Lines of the first are kept as far as they lie in all the others.
 */

import type { IntersectionShape } from "../../design/shapes/intersection.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { clipLinesTo, intersect } from "../../flat/polygons.js";
import type { DrawnPaths } from "../read-art.js";
import { requireRegion, requireSomething } from "./rules.js";
import type { ShapeNode } from "./shape-node.js";

export const intersectionShape: ShapeNode<IntersectionShape<ShapeSpec>> = {
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
