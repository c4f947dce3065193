/**
 * A post with a domed top in closed form.
 */

import type { Axis } from "./posts.js";
import { inBall, inCone } from "./span.js";
import type { Through } from "./through.js";
import { keptPieces, type ToldBody } from "./told-body.js";

export interface PostSizes {
  /** Heights over the axis's place of its foot, of where it surely stands in the metal, and of its top, mm. */
  readonly foot: number;
  readonly sure: number;
  readonly top: number;
  /** Radius at the foot and below the dome. */
  readonly radius: number;
  readonly tip: number;
}

/** What is grown by the tolerance lies within that beside it, mm (chosen). */
const AROUND = 0.25;

export function postBody({ at, out }: Axis, sizes: PostSizes, kind: ToldBody["kind"]): ToldBody {
  const { foot, sure, top, radius, tip } = sizes;
  const straight = top - tip;
  const narrows = (tip - radius) / (straight - foot);
  return {
    kind,
    sphere: { centre: at, radius: Math.max(top, -foot) + radius },
    post: at,
    axis: { at, out, radius: radius + AROUND },
    line: (through) => lineBeside(at, out, through),
    pieces: keptPieces((grown) => {
      const low = grown < 0 ? sure : foot;
      const dome = {
        low: Math.max(low, straight),
        high: top + Math.max(0, grown),
        clips: [inBall(straight, tip + grown)],
      };
      if (straight <= low) return [dome];
      return [{ low, high: straight, clips: [inCone(0, radius + grown - narrows * foot, narrows)] }, dome];
    }),
  };
}

/** A column seen from an axis: height along it, and the rest across it in the two directions that the column has of its own. */
function lineBeside(
  [ax, ay, az]: Axis["at"],
  [ox, oy, oz]: Axis["out"],
  { start: [sx, sy, sz], way: [wx, wy, wz] }: Through,
): ReturnType<ToldBody["line"]> {
  const [px, py, pz] = [sx - ax, sy - ay, sz - az];
  const [z, dz] = [px * ox + py * oy + pz * oz, wx * ox + wy * oy + wz * oz];
  // Across the axis: x along the column's own lean, y beside it, so that y stays as it is.
  const [lx, ly, lz] = [wx - dz * ox, wy - dz * oy, wz - dz * oz];
  const dx = Math.hypot(lx, ly, lz);
  const [fx, fy, fz] = [px - z * ox, py - z * oy, pz - z * oz];
  const square = fx * fx + fy * fy + fz * fz;
  const x = dx < ALONG ? 0 : (fx * lx + fy * ly + fz * lz) / dx;
  return { x, y: Math.sqrt(Math.max(0, square - x * x)), z, dx: dx < ALONG ? 0 : dx, dy: 0, dz };
}

/** A column that leans by less from an axis goes along it, as a sine. */
const ALONG = 1e-9;
