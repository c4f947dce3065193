/**
 * A shape and its mirror image in a line.
 */
import { IDENTITY } from "../../base/math/affine.js";
import { type AxisPoints, axisField, mirrorIn } from "./axis.js";
import { uniteCopies } from "./copies.js";
import { ofField, type ShapeNode } from "./shape-node.js";
import type { ShapeSpec } from "./shape-spec.js";

export interface MirrorShape {
  readonly mirror: AxisPoints;
  readonly of: ShapeSpec;
}

export const mirrorShape: ShapeNode<MirrorShape> = {
  key: "mirror",
  fields: (shape) => ({
    mirror: axisField.describe("two points of the mirror line, [[x, y], [x, y]], in the region's unit"),
    of: ofField(shape),
  }),
  draw: ({ mirror, of }, frame) => uniteCopies(frame.draw(of, ".of"), [IDENTITY, mirrorIn(mirror)], frame),
};
