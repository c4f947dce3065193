/**
 * A scale bar of 10 mm, or of another length, in two halves: with it, a print shows whether it came out at true size.
 */
import type { Point2 } from "../../base/math/point.js";
import { COLOURS, PENS } from "./pens.js";
import { element, group } from "./svg.js";
import { SIZES, textAt } from "./svg-text.js";

/** mm */
export const SCALE_BAR = { length: 10, height: 1, clear: 4.5 } as const;

/** The bar with its top left corner at a point. */
export function scaleBar([x, y]: Point2, length: number = SCALE_BAR.length): string {
  const { height } = SCALE_BAR;
  const half = { y, width: length / 2, height };
  const below = y + height + SIZES.small + 0.3;
  return group(
    "scale-bar",
    element("rect", { x, ...half, fill: COLOURS.ink }),
    element("rect", { x: x + length / 2, ...half, fill: "#ffffff" }),
    element("rect", { x, y, width: length, height, ...PENS.thin }),
    textAt([x, below], "0", { size: SIZES.small, anchor: "middle" }),
    textAt([x + length, below], `${length} mm`, { size: SIZES.small, anchor: "middle" }),
  );
}
