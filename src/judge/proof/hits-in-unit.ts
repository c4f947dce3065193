/**
 * Where straight lines go through a mesh that is one unit and its turned images: each line is turned back into the unit by as
 * many images as reach over its angle, so that one unit's triangles are looked at and not the whole ring's.
 */
import { TURN } from "../../base/units.js";
import type { Turned } from "../../mesh/turned.js";
import { type HalfPlaneLine, insideAlong } from "./hits.js";
import type { Intervals } from "./intervals.js";

/** A unit that reaches farther to one side of its middle is not told from others by it, radians: a quarter of a turn. */
const MOST_REACH = TURN / 4 - 1e-3;

/** Images are tried this far beyond their reach, radians: far above rounding, far below a facet. */
const BESIDE = 1e-6;

/** As `insideAlong`; undefined where a unit reaches too far round. */
export function insideUnits(turned: Turned, lines: readonly HalfPlaneLine[]): (Intervals | undefined)[] | undefined {
  const { mesh, units, corners } = turned;
  const reach = reachOf(turned);
  if (Math.max(reach.high, -reach.low) >= MOST_REACH) return undefined;
  const step = TURN / units;
  const own: number[] = [];
  const inUnit: HalfPlaneLine[] = [];
  lines.forEach((line, i) => {
    // Beside the unit's middle, between half a turn before and half a turn after it.
    const beside = line.angle - reach.middle - TURN * Math.round((line.angle - reach.middle) / TURN);
    const first = Math.ceil((beside - reach.high - BESIDE) / step);
    for (let k = first; k <= (beside - reach.low + BESIDE) / step; k++) {
      const angle = line.angle - k * step;
      own.push(i);
      const { point, way, span } = line;
      inUnit.push({ angle: angle - TURN * Math.floor(angle / TURN), point, way, span });
    }
  });
  let last = 0;
  for (let i = 0; i < corners.length; i++) if (corners[i] > last) last = corners[i];
  const unit = { positions: mesh.positions.subarray(0, 3 * last + 3), triangles: corners };
  return insideAlong(unit, inUnit, { count: lines.length, of: own });
}

/** The angle of the middle of a unit's corners, and how far round they reach before and after it, radians. */
function reachOf({ mesh: { positions: p }, corners }: Turned) {
  let [x, y] = [0, 0];
  for (let i = 0; i < corners.length; i++) {
    x += p[3 * corners[i]];
    y += p[3 * corners[i] + 1];
  }
  const middle = Math.atan2(y, x);
  const [cos, sin] = [Math.cos(middle), Math.sin(middle)];
  let [low, high] = [0, 0];
  for (let i = 0; i < corners.length; i++) {
    const px = p[3 * corners[i]];
    const py = p[3 * corners[i] + 1];
    const along = px * cos + py * sin;
    // Tangents grow as angles do; behind the axis there is none.
    const tangent = along > 0 ? (py * cos - px * sin) / along : Number.POSITIVE_INFINITY;
    if (tangent < low) low = tangent;
    if (tangent > high) high = tangent;
  }
  return { middle, low: Math.atan(low), high: Math.atan(high) };
}
