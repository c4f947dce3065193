/**
 * Relief that sinks into the seat towards its ends, smoothly: h becomes h · s − dip · (1 − s), where s rises from 0 at the
 * end to 1 as 3t² − 2t³, whose curvature is at most 6 / length².
 *
 * The end dips below the seat, so that the relief passes through it at a slope and never lies along it.
 */

import { splittingAtLines } from "../band/surface/refine.js";
import { smoothStep } from "../base/math/smooth-step.js";
import { finish, type Pausing } from "../base/pausing.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Fade, FlatBody } from "../relief/flat-body.js";
import type { Rise } from "../relief/weave/rise-along.js";

/** What is raised ends this share of the foot's depth below the seat, so that it passes through the seat at a slope. */
const DIP_SHARE = 0.5;

/** The largest curvature of 3t² − 2t³. */
const STEEPEST_CURVATURE = 6;

/**
 * A flat body as it fades; the body itself where its shape does not.
 *
 * @param sink depth of the body's foot, mm
 */
export function fadeBody(flat: Mesh, body: Pick<FlatBody, "fade" | "height">, sink: number): Mesh {
  return finish(fadingBody(flat, body, sink));
}

/** The same in pieces. */
export function* fadingBody(
  flat: Mesh,
  { fade, height }: Pick<FlatBody, "fade" | "height">,
  sink: number,
): Pausing<Mesh> {
  if (fade === undefined) return flat;
  const dip = DIP_SHARE * sink;
  // A chord over a share 1/n of the length is off by curvature · height / (8 n²).
  const count = Math.ceil(Math.sqrt((STEEPEST_CURVATURE * (height + dip)) / (8 * fade.tolerance)));
  const { positions, triangles } = yield* splittingAtLines(flat, 0, fadeLines(fade, Math.max(2, count)));
  const faded = Float64Array.from(positions);
  for (let i = 0; i < faded.length; i += 3) {
    const h = faded[i + 2];
    const share = shareAt(fade, faded[i]);
    const lowered = dip * (1 - share);
    // The foot stays, and what is split off its walls keeps its place between foot and seat.
    faded[i + 2] = h >= 0 ? h * share - lowered : h - (lowered * (h + sink)) / sink;
  }
  return { positions: faded, triangles };
}

/** A lift as it fades with its body. */
export function fadedRise(rise: Rise, fade: Fade | undefined): Rise {
  return fade === undefined ? rise : { ...rise, at: (u, v) => rise.at(u, v) * shareAt(fade, u) };
}

/** u at which the body is split, rising, mm. */
function fadeLines({ ends: [low, high], length }: Fade, count: number): number[] {
  const steps = Array.from({ length: count }, (_, i) => (length * (i + 1)) / count);
  return [...steps.map((step) => low + step), ...steps.toReversed().map((step) => high - step)];
}

function shareAt({ ends: [low, high], length }: Fade, u: number): number {
  return smoothStep(Math.min(u - low, high - u) / length);
}
