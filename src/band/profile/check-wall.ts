/**
 * Whether enough metal stands between bore and outside.
 */
import { pointAt, segmentEnd, segmentLength, segmentStart } from "../../base/math/curve.js";
import { showLength } from "../../base/units.js";
import type { ProfileSpec } from "../../design/profile/profile.js";
import type { BoreSketch, OutsideSketch } from "./form.js";
import { LEAST_WALL, SAME_POINT } from "./least-sizes.js";
import { Misfit } from "./misfit.js";

/**
 * Metal between the nominal outside and the bore, at the ends and the middle of every piece: with both about w = 0, the
 * difference of two arcs is least there. A free outside may run down to the bore at its ends, so it must only stay above.
 */
export function checkWall(spec: ProfileSpec, bore: BoreSketch, outside: OutsideSketch): void {
  const points = outside.links.flatMap(({ segment }) => [
    segmentStart(segment),
    pointAt(segment, segmentLength(segment) / 2),
  ]);
  points.push(segmentEnd(outside.links[outside.links.length - 1].segment));
  const walls = points.map(([w, r]) => r - bore.radiusAt(w));
  const least = Math.min(...walls);
  // Rounding must not turn away a wall of exactly the least.
  if (outside.drawnAs === undefined) {
    if (least >= LEAST_WALL - SAME_POINT) return;
  } else if (Math.min(...walls.slice(1, -1)) > 0 && least >= -SAME_POINT) {
    return;
  }
  const sizeOf = (part: "outside" | "bore", name: string | undefined) =>
    name === undefined ? [] : [{ field: `${part}.${name}`, value: Number(Reflect.get(spec[part], name)) }];
  const stepped = spec.step === undefined ? [] : [{ field: "step.depth", value: spec.step.depth }];
  const fields = [...sizeOf("outside", outside.thins), ...sizeOf("bore", bore.thins), ...stepped]
    .sort((a, b) => b.value - a.value)
    .map(({ field }) => field);
  if (outside.drawnAs !== undefined) {
    const message = "the outside reaches into the bore";
    throw new Misfit("bore-larger-than-outside", message, [...fields, `outside.${outside.drawnAs}`]);
  }
  const met = least > 0 ? `comes within ${showLength(least)} of the outside` : "reaches the outside";
  const message = `the bore ${met}; the model needs ${showLength(LEAST_WALL)} of metal between them`;
  throw new Misfit("thickness-too-small", message, [...fields, "thickness"]);
}
