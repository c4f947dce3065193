/**
 * Copies turned about a point, evenly spread over a full turn, the drawn one among them.
 */
import { z } from "zod";
import { compose, IDENTITY, rotation, translation } from "../../base/math/affine.js";
import type { Point2 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import { uniteCopies } from "./copies.js";
import { ofField, pointField, type ShapeNode } from "./shape-node.js";
import type { ShapeSpec } from "./shape-spec.js";
import { tileMiddle } from "./tile-middle.js";

export interface TurnsShape {
  /** Copies in a full turn. */
  readonly turns: number;
  /** Default: the tile's middle. */
  readonly about?: Point2 | undefined;
  readonly of: ShapeSpec;
}

export const turnsShape: ShapeNode<TurnsShape> = {
  key: "turns",
  fields: (shape) => ({
    turns: z.int().min(2).max(360).describe("copies in a full turn, the drawn one among them, 2 to 360"),
    about: pointField
      .optional()
      .describe("turns: the point they turn about, in the region's unit; default the middle of the tile"),
    of: ofField(shape),
  }),
  draw({ turns, about, of }, frame) {
    const [x, y] = about ?? tileMiddle(frame);
    const maps = Array.from({ length: turns }, (_, i) =>
      i === 0 ? IDENTITY : compose(translation(x, y), rotation((TURN * i) / turns), translation(-x, -y)),
    );
    return uniteCopies(frame.draw(of, ".of"), maps, frame);
  },
};
