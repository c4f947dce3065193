/**
 * A shape and its mirror image in a line.
 */

import { IDENTITY } from "../../base/math/affine.js";
import type { MirrorShape } from "../../design/shapes/mirror.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { mirrorIn } from "./axis.js";
import { uniteCopies } from "./copies.js";
import type { ShapeNode } from "./shape-node.js";

export const mirrorShape: ShapeNode<MirrorShape<ShapeSpec>> = {
  draw: ({ mirror, of }, frame) => uniteCopies(frame.draw(of, ".of"), [IDENTITY, mirrorIn(mirror)], frame),
};
