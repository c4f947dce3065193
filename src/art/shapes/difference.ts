/**
 * The first shape without what the others cover. Lines of the first are cut off where they run into the others.
 */

import type { DifferenceShape } from "../../design/shapes/difference.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { clipLinesTo, subtract, unite } from "../../flat/polygons.js";
import { requireRegion, requireSomething } from "./rules.js";
import type { ShapeNode } from "./shape-node.js";

export const differenceShape: ShapeNode<DifferenceShape<ShapeSpec>> = {
  draw({ difference }, frame) {
    const [first, ...others] = difference.map((part, i) => frame.draw(part, `.difference[${i}]`));
    others.forEach((other, i) => {
      requireRegion(other, frame.place(`.difference[${i + 1}]`), "takes nothing away");
    });
    const away = others.flatMap(({ closed }) => closed);
    frame.budget.spendUnion([...first.closed, ...first.open, ...away], frame.where);
    const taken = unite(away);
    const left = { closed: subtract(first.closed, taken), open: clipLinesTo(first.open, taken, "outside") };
    return requireSomething(left, frame.place(".difference"), "the difference leaves nothing");
  },
};
