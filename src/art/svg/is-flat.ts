/**
 * Maps that make a line or a point of every shape.
 */
import { type Affine, stretches } from "../../base/math/affine.js";

/** A map whose smaller factor is below this share of the larger makes a line of every shape. */
const FLAT = 1e-9;

export function isFlat(map: Affine): boolean {
  const [large, small] = stretches(map);
  return small <= large * FLAT;
}
