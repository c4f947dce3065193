/**
 * A leaf: a shape that the pattern has under a name.
 */

import type { NamedShape } from "../../design/shapes/named.js";
import type { ShapeNode } from "./shape-node.js";

export const namedShape: ShapeNode<NamedShape> = {
  draw: ({ shape }, frame) => frame.drawNamed(shape),
};
