/**
 * Beads made exactly as alike as they are meant to be: beads spaced along curves are so only within the tolerance.
 */
import { type AboutAxis, broughtBy, turnAbout } from "../base/math/about-axis.js";
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
  const images = new BeadIndex(beads, same).images(turnAbout(TURN / units));
  if (images === undefined) return undefined;
  const placed = beads.slice();
  const seen = new Uint8Array(beads.length);
  const turns = (round: number) => Array.from({ length: units }, (_, k) => turnAbout((round * k) / units));
  const [back, on] = [turns(-TURN), turns(TURN)];
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
      const { centre, outward, radius } = mean;
      const own = { centre: broughtBy(on[k], centre), radius, outward: broughtBy(on[k], outward) };
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

/** The beads half way to their images under a mirror; undefined where one has none. */
export function mirrorBeads(beads: readonly Bead[], mirror: AboutAxis, same: number): Bead[] | undefined {
  const images = new BeadIndex(beads, same).images(mirror);
  if (images === undefined) return undefined;
  const placed: Bead[] = [];
  const members = [0, 0];
  const motions = [turnAbout(0), mirror];
  for (let i = 0; i < images.length; i++) {
    if (images[images[i]] !== i) return undefined;
    members[0] = i;
    members[1] = images[i];
    placed.push(meanBead(beads, members, motions));
  }
  return placed;
}

/** One bead for several of them that nearly coincide once each is moved by its own motion. */
function meanBead(beads: readonly Bead[], members: readonly number[], motions: readonly AboutAxis[]): Bead {
  const { length: count } = members;
  let radius = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  let nx = 0;
  let ny = 0;
  let nz = 0;
  for (let k = 0; k < count; k++) {
    const { centre: c, outward: n, radius: own } = beads[members[k]];
    const motion = motions[k];
    x += (motion.a * c[0] + motion.b * c[1]) / count;
    y += (motion.c * c[0] + motion.d * c[1]) / count;
    z += (motion.e * c[2]) / count;
    nx += motion.a * n[0] + motion.b * n[1];
    ny += motion.c * n[0] + motion.d * n[1];
    nz += motion.e * n[2];
    radius += own / count;
  }
  const length = Math.hypot(nx, ny, nz);
  return { centre: [x, y, z], radius, outward: [nx / length, ny / length, nz / length] };
}
