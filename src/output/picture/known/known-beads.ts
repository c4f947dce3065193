/**
 * Beads are spheres.
 */
import { PointGrid } from "../../../base/math/point-grid.js";
import type { Bead } from "../../../beads/bead.js";
import { type KnownSurface, mostLean, reachOf } from "./known-surface.js";

/**
 * @param deviation by which share of its radius a bead's mesh may stand off its sphere
 * @param tolerance and by how much at most, mm
 */
export function knownBeads(beads: readonly Bead[], deviation: number, tolerance: number): KnownSurface {
  const largest = beads.reduce((most, { radius }) => Math.max(most, radius), 0);
  if (largest === 0) return () => {};
  const grid = new PointGrid<Bead>(largest + reachOf(tolerance));
  for (const bead of beads) grid.add(bead.centre, bead);
  return (x, y, z, found) => {
    for (const { centre, radius } of grid.near([x, y, z])) {
      const dx = x - centre[0];
      const dy = y - centre[1];
      const dz = z - centre[2];
      const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
      const off = Math.min(tolerance, deviation * radius);
      if (distance === 0 || Math.abs(distance - radius) > reachOf(off)) continue;
      // Vertices stand out as much as faces fall short: chords of a sphere that much larger.
      found(dx / distance, dy / distance, dz / distance, mostLean([radius, Number.POSITIVE_INFINITY], 2 * off));
    }
  };
}
