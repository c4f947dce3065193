/**
 * Strokes of a pen in the plane, as polylines.
 */
import type { Point2 } from "../base/math/point.js";
import { radians } from "../base/units.js";

/** Points of a stroke in turn. */
export type Stroke = readonly Point2[];

/** Chords of an arc, degrees. A letter's bow of 0.25 heights lies 0.004 off: less than a pixel. */
const STEP = 20;

/** Along an ellipse from one angle to another, degrees; backwards where `to` is the smaller. */
export function arcAround([x, y]: Point2, [rx, ry]: Point2, from: number, to: number): Stroke {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / STEP));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = radians(from + ((to - from) * i) / steps);
    return [x + rx * Math.cos(angle), y + ry * Math.sin(angle)] as const;
  });
}
