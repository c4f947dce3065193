/**
 * Beads made exactly as alike as they are meant to be: beads spaced along curves are so only within the tolerance.
 */
import { TURN } from "../base/units.js";
import type { Bead } from "./bead.js";
import { BeadIndex, SIZE_SHARE } from "./bead-index.js";

/**
 * The beads as alike as their images under turns by so manyth parts of the round: each of them stands in the mean of what
 * the turns bring to its place. Undefined where one has no image, or comes back to itself too soon: then there are some
 * more or fewer of them than the units could share.
 */
export function turnBeads(beads: readonly Bead[], units: number, same: number): readonly Bead[] | undefined {
  if (units === 1) return beads;
  const images = new BeadIndex(beads, same).images(turn(TURN / units));
  if (images === undefined) return undefined;
  const placed = beads.slice();
  const seen = new Uint8Array(beads.length);
  const [back, on] = [-TURN, TURN].map((round) => Array.from({ length: units }, (_, k) => turn((round * k) / units)));
  for (let first = 0; first < beads.length; first++) {
    if (seen[first] === 1) continue;
    const orbit = [first];
    for (let bead = images[first]; bead !== first; bead = images[bead]) {
      if (seen[bead] === 1 || orbit.length === units) return undefined;
      orbit.push(bead);
      seen[bead] = 1;
    }
    seen[first] = 1;
    if (orbit.length !== units) return undefined;
    const mean = meanBead(beads, orbit, back);
    for (let k = 0; k < units; k++) {
      const bead = orbit[k];
      const own = { centre: on[k](mean.centre), outward: on[k](mean.outward), radius: mean.radius };
      // Small steps from each to the next may add up to a bead that is none of them.
      if (isAside(beads[bead], own, same)) return undefined;
      placed[bead] = own;
    }
  }
  return placed;
}

/** Whether a bead would be put farther away, or made larger or smaller, than may be. */
function isAside(
  { centre: [x, y, z], radius }: Bead,
  { centre: [px, py, pz], radius: other }: Bead,
  same: number,
): boolean {
  const away = Math.sqrt((px - x) * (px - x) + (py - y) * (py - y) + (pz - z) * (pz - z));
  return away > same || Math.abs(other - radius) > SIZE_SHARE * same;
}

/** Keeps the origin where it is. */
type Motion = (point: Bead["centre"]) => Bead["centre"];

/** The beads half way to their images under a mirror; undefined where one has none. */
export function mirrorBeads(beads: readonly Bead[], mirror: Motion, same: number): Bead[] | undefined {
  const images = new BeadIndex(beads, same).images(mirror);
  if (images === undefined || images.some((image, i) => images[image] !== i)) return undefined;
  const motions = [(point: Bead["centre"]) => point, mirror];
  return images.map((image, i) => meanBead(beads, [i, image], motions));
}

/** One bead for several of them that nearly coincide once each is moved by its own motion. */
function meanBead(beads: readonly Bead[], members: readonly number[], motions: readonly Motion[]): Bead {
  const { length: count } = members;
  let radius = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  let nx = 0;
  let ny = 0;
  let nz = 0;
  for (let k = 0; k < count; k++) {
    const bead = beads[members[k]];
    const centre = motions[k](bead.centre);
    const outward = motions[k](bead.outward);
    x += centre[0] / count;
    y += centre[1] / count;
    z += centre[2] / count;
    nx += outward[0];
    ny += outward[1];
    nz += outward[2];
    radius += bead.radius / count;
  }
  const length = Math.hypot(nx, ny, nz);
  return { centre: [x, y, z], outward: [nx / length, ny / length, nz / length], radius };
}

function turn(angle: number): Motion {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return (point) => [point[0] * cos - point[1] * sin, point[0] * sin + point[1] * cos, point[2]];
}
