/**
 * The box round what a drawing paints, on its page.
 */
import { AnnuletError } from "../../base/errors.js";
import { scaling } from "../../base/math/affine.js";
import type { Pausing } from "../../base/pausing.js";
import type { Drawing } from "./drawing.js";
import { outliningDrawing } from "./outline-drawing.js";
import type { Box } from "./viewport.js";

/** The drawing is measured as if it were so large, mm, at this tolerance, mm: a box true to 1e-5 of its size. */
const [SIZE, TOLERANCE] = [100, 1e-3];

/**
 * Measures the art. Exact to 1e-5 of the page (of the art itself, roughly sized, where there is no page).
 *
 * @throws AnnuletError `svg-empty` where nothing shows, and as `outlineDrawing`
 */
export function* measuringArt(drawing: Drawing, where: string): Pausing<Box> {
  const size = drawing.page === undefined ? roughSize(drawing) : Math.max(drawing.page.width, drawing.page.height);
  const shrink = SIZE / size;
  const scale = 1e6;
  const how = { place: scaling(shrink, shrink), scale, tolerance: TOLERANCE, where };
  const { region } = yield* outliningDrawing(drawing, how);
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const ring of region) {
    for (const { x, y } of ring) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  }
  if (!(right > left && bottom > top)) throw nothingShows(drawing.name, where);
  const unit = 1 / (scale * shrink);
  return { x: left * unit, y: top * unit, width: (right - left) * unit, height: (bottom - top) * unit };
}

/** The error for a drawing of which nothing shows. */
export function nothingShows(name: string, where: string): AnnuletError {
  return new AnnuletError({
    code: "svg-empty",
    message: `nothing of the SVG file ${name} shows: it is clipped away, lies off its page, or covers no area`,
    path: where,
    allowed: "shapes on the page",
  });
}

/** Largest distance of any piece's ends from the origin, px. */
function roughSize({ shapes }: Drawing): number {
  let most = 0;
  for (const { subpaths, map, stroke } of shapes) {
    const [a, b, c, d, e, f] = map;
    const grow = (x: number, y: number) => {
      most = Math.max(most, Math.abs(a * x + c * y + e), Math.abs(b * x + d * y + f));
    };
    for (const { start, segments } of subpaths) {
      grow(start[0] + (stroke?.width ?? 0), start[1]);
      for (const segment of segments) {
        if (segment.kind === "line") grow(...segment.to);
        else if (segment.kind === "cubic") for (const point of segment.points) grow(...point);
        else {
          const reach = segment.kind === "arc" ? segment.radius : Math.max(...segment.radii);
          for (const sign of [-1, 1]) grow(segment.centre[0] + sign * reach, segment.centre[1] + sign * reach);
        }
      }
    }
  }
  return most > 0 && Number.isFinite(most) ? most : 1;
}
