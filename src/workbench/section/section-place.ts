/**
 * Where the cross-section lies on the screen: turned so that the band's width runs upright, level with the strip beside it,
 * the bore on the left.
 */
import type { FlatView, ScreenPoint } from "../strip/flat-view.js";
import type { SectionPlace } from "./dimension-layout.js";
import type { SectionNumbers } from "./section-sizes.js";

/** The metal's middle stands at this share of the view's width: the numbers on its right are wider. Chosen. */
const MIDDLE = 0.5;

export function sectionPlace(view: FlatView, [width, height]: ScreenPoint, { sizes }: SectionNumbers): SectionPlace {
  const [half, top] = [(sizes.width ?? 0) / 2, sizes.thickness ?? 0];
  const left = width * MIDDLE - (top * view.scale) / 2;
  const yOf = (w: number): number => height / 2 - (w - view.v) * view.scale;
  return {
    at: ([w, h]) => [left + h * view.scale, yOf(w)],
    left,
    right: left + top * view.scale,
    top: yOf(half),
    bottom: yOf(-half),
  };
}
