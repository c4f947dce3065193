/**
 * Closed outlines as the data of an SVG path, whose y grows downwards.
 */
import type { Point2 } from "../../index.js";

/** @param digits behind the decimal point */
export function outlinePath(rings: readonly (readonly Point2[])[], digits: number): string {
  const point = ([x, y]: Point2): string => `${x.toFixed(digits)} ${(-y).toFixed(digits)}`;
  return rings.map((ring) => `M${ring.map(point).join("L")}Z`).join("");
}
