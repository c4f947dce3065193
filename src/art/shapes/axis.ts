/** Lines that shapes are mirrored in. */
import { type Affine, compose, rotation, scaling, translation } from "../../base/math/affine.js";
import type { Point2 } from "../../base/math/point.js";
import type { AxisPoints } from "../../design/shapes/fields.js";

/** The line's direction, a unit vector. */
export function directionOf([[ax, ay], [bx, by]]: AxisPoints): Point2 {
  const length = Math.hypot(bx - ax, by - ay);
  return [(bx - ax) / length, (by - ay) / length];
}

export function mirrorIn(axis: AxisPoints): Affine {
  const [x, y] = axis[0];
  const [dx, dy] = directionOf(axis);
  const angle = Math.atan2(dy, dx);
  return compose(translation(x, y), rotation(angle), scaling(1, -1), rotation(-angle), translation(-x, -y));
}
