/**
 * Rectangles about the origin with their corners cut off, and moved in.
 */
import type { Segment } from "../base/math/curve.js";
import type { Point2 } from "../base/math/point.js";

/** A rectangle; mm. */
export interface Rectangle {
  readonly length: number;
  readonly width: number;
  /** What is cut off either side of each corner, at 45°. 0 leaves sharp corners. */
  readonly corner: number;
}

/**
 * Its corners, counter-clockwise from the side at +x: eight, or four where they are sharp.
 *
 * @param by how far the sides are moved in, mm, up to half the width; cut corners get smaller in step with the width, so that
 *   they end where the keel begins
 */
export function rectangleCorners({ length, width, corner }: Rectangle, by = 0): Point2[] {
  const [a, b] = [length / 2 - by, width / 2 - by];
  if (corner === 0) {
    return [
      [a, -b],
      [a, b],
      [-a, b],
      [-a, -b],
    ];
  }
  const c = (corner * b) / (width / 2);
  return [
    [a, -b + c],
    [a, b - c],
    [a - c, b],
    [-a + c, b],
    [-a, b - c],
    [-a, -b + c],
    [-a + c, -b],
    [a - c, -b],
  ];
}

/** The sides of a polygon as lines. */
export function sidesOf(corners: readonly Point2[]): Segment[] {
  return corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % corners.length] }));
}
