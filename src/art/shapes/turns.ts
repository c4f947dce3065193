/**
 * Copies turned about a point, evenly spread over a full turn, the drawn one among them.
 */

import { compose, IDENTITY, rotation, translation } from "../../base/math/affine.js";
import { TURN } from "../../base/units.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import type { TurnsShape } from "../../design/shapes/turns.js";
import { uniteCopies } from "./copies.js";
import type { ShapeNode } from "./shape-node.js";
import { tileMiddle } from "./tile-middle.js";

export const turnsShape: ShapeNode<TurnsShape<ShapeSpec>> = {
  draw({ turns, about, of }, frame) {
    const [x, y] = about ?? tileMiddle(frame);
    const maps = Array.from({ length: turns }, (_, i) =>
      i === 0 ? IDENTITY : compose(translation(x, y), rotation((TURN * i) / turns), translation(-x, -y)),
    );
    return uniteCopies(frame.draw(of, ".of"), maps, frame);
  },
};
