/**
 * A shape and its glide image: mirrored in a line and moved along it.
 */

import { compose, IDENTITY, translation } from "../../base/math/affine.js";
import type { GlideShape } from "../../design/shapes/glide.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { directionOf, mirrorIn } from "./axis.js";
import { uniteCopies } from "./copies.js";
import type { ShapeNode } from "./shape-node.js";

export const glideShape: ShapeNode<GlideShape<ShapeSpec>> = {
  draw({ glide, by, of }, frame) {
    const [x, y] = directionOf(glide);
    const map = compose(translation(by * x, by * y), mirrorIn(glide));
    return uniteCopies(frame.draw(of, ".of"), [IDENTITY, map], frame);
  },
};
