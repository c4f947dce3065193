/**
 * A ridge: straight flanks rise from the outline to a line in the middle, which is sharp or rounded by a nose.
 *
 * With flanks at α, a nose of radius ρ takes ρ (1 / cos α − 1) off the peak L tan α and meets the flanks ρ sin α from the
 * middle. For a given rise K: L sin α − (K − ρ) cos α = ρ, so α = atan2(K − ρ, L) + asin(ρ / hypot(L, K − ρ)).
 */
import { type Arc, chordCount, type Line } from "../../base/math/curve.js";
import { largestWhere } from "../../base/math/largest.js";
import type { Point2 } from "../../base/math/point.js";
import { radians, showLength } from "../../base/units.js";
import type { RidgeSection } from "../../design/sections/ridge.js";
import { roundEdge } from "./edge-radius.js";
import { misfit, type SectionForm } from "./section-form.js";
import { foot } from "./wall.js";

export const ridgeSection: SectionForm<RidgeSection> = {
  draw({ height, slope, nose, wall, radius, draft }, frame) {
    const half = frame.reach();
    if (height !== undefined && height <= wall) {
      throw misfit(frame, "height", {
        message: `a ridge on a wall of ${showLength(wall)} does not rise`,
        value: height,
        allowed: `above ${showLength(wall)}`,
        hint: "make it higher, or its wall lower",
      });
    }
    const flank = (radius: number) =>
      slope === undefined ? steepness(half, (height ?? wall) - wall, radius) : radians(slope);
    const fits = (radius: number) => radius * Math.sin(flank(radius)) <= half && flank(radius) < Math.PI / 2;
    if (!fits(nose)) {
      const largest = largestWhere(0, nose, fits);
      throw misfit(frame, "nose", {
        message: `a nose of ${showLength(nose)} does not fit between the flanks`,
        value: nose,
        allowed: `0 to ${showLength(Math.floor(largest * 1000) / 1000)}`,
        hint: "make it smaller, or the region wider",
      });
    }
    const angle = flank(nose);
    const peak = wall + half * Math.tan(angle) - nose * (1 / Math.cos(angle) - 1);
    if (radius > 0) {
      const to: Point2 = [half - nose * Math.sin(angle), peak - nose * (1 - Math.cos(angle))];
      const side: Line = { kind: "line", from: [0, wall], to };
      const start = Math.PI / 2 + angle;
      const tip: Arc = { kind: "arc", centre: [half, peak - nose], radius: nose, start, sweep: -angle };
      return roundEdge({ wall, draft, radius }, nose === 0 ? [side] : [side, tip], frame);
    }
    const count = nose === 0 ? 1 : chordCount(nose, angle, frame.tolerance);
    const top = Array.from({ length: count + 1 }, (_, i): Point2 => {
      const at = angle * (1 - i / count);
      return [half - nose * Math.sin(at), peak - nose * (1 - Math.cos(at))];
    });
    const line: Point2[] = [[0, wall], ...(nose === 0 ? [top[count]] : top)];
    return [...foot(wall, draft), ...line.filter(([d], i) => i === 0 || d > line[i - 1][0])];
  },
};

/** The flanks' angle, radians; beyond a quarter turn where the nose does not fit. */
function steepness(half: number, rise: number, nose: number): number {
  const far = Math.hypot(half, rise - nose);
  return nose > far ? Math.PI : Math.atan2(rise - nose, half) + Math.asin(nose / far);
}
