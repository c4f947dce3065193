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
    const mean = meanBead(orbit.map((bead, k) => moved(beads[bead], turn((-TURN * k) / units))));
    for (const [k, bead] of orbit.entries()) {
      const own = moved(mean, turn((TURN * k) / units));
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
  return Math.hypot(px - x, py - y, pz - z) > same || Math.abs(other - radius) > SIZE_SHARE * same;
}

/** The beads half way to their images under a mirror; undefined where one has none. */
export function mirrorBeads(
  beads: readonly Bead[],
  mirror: (point: Bead["centre"]) => Bead["centre"],
  same: number,
): Bead[] | undefined {
  const images = new BeadIndex(beads, same).images(mirror);
  if (images === undefined || images.some((image, i) => images[image] !== i)) return undefined;
  return images.map((image, i) => meanBead([beads[i], moved(beads[image], mirror)]));
}

/** @param map keeps the origin where it is */
function moved(bead: Bead, map: (point: Bead["centre"]) => Bead["centre"]): Bead {
  return { centre: map(bead.centre), outward: map(bead.outward), radius: bead.radius };
}

/** One bead for several that nearly coincide. */
function meanBead(beads: readonly Bead[]): Bead {
  const { length: count } = beads;
  let radius = 0;
  let [x, y, z] = [0, 0, 0];
  let [nx, ny, nz] = [0, 0, 0];
  for (const { centre, outward, radius: own } of beads) {
    x += centre[0] / count;
    y += centre[1] / count;
    z += centre[2] / count;
    nx += outward[0];
    ny += outward[1];
    nz += outward[2];
    radius += own / count;
  }
  const length = Math.hypot(nx, ny, nz);
  return { centre: [x, y, z], outward: [nx / length, ny / length, nz / length], radius };
}

function turn(angle: number): (point: Bead["centre"]) => Bead["centre"] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ([x, y, z]) => [x * cos - y * sin, x * sin + y * cos, z];
}
