/**
 * How thick a cross-section is.
 */
import type { ExactProfile } from "./outline.js";

/** Below this two radii are one, mm: rounding. */
const SAME_RADIUS = 1e-9;

/** From the bore's narrowest circle to the outside's highest point, mm: less than is drawn under a rounded ridge or a hollow. */
export function thicknessOf({ boreRadius, outsideRadius, thickness }: ExactProfile): number {
  const measured = outsideRadius - boreRadius;
  return Math.abs(measured - thickness) < SAME_RADIUS ? thickness : measured;
}
