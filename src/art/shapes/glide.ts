/**
 * A shape and its glide image: mirrored in a line and moved along it.
 */
import { z } from "zod";
import { compose, IDENTITY, translation } from "../../base/math/affine.js";
import { type AxisPoints, axisField, directionOf, mirrorIn } from "./axis.js";
import { uniteCopies } from "./copies.js";
import { ofField, type ShapeNode } from "./shape-node.js";
import type { ShapeSpec } from "./shape-spec.js";

export interface GlideShape {
  readonly glide: AxisPoints;
  /** In the region's unit. */
  readonly by: number;
  readonly of: ShapeSpec;
}

export const glideShape: ShapeNode<GlideShape> = {
  key: "glide",
  fields: (shape) => ({
    glide: axisField.describe("two points of the glide line, [[x, y], [x, y]], in the region's unit"),
    by: z
      .number()
      .min(-1000)
      .max(1000)
      .describe("how far the image is moved along the line, towards its second point, in the region's unit"),
    of: ofField(shape),
  }),
  draw({ glide, by, of }, frame) {
    const [x, y] = directionOf(glide);
    const map = compose(translation(by * x, by * y), mirrorIn(glide));
    return uniteCopies(frame.draw(of, ".of"), [IDENTITY, map], frame);
  },
};
