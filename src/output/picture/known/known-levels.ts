/**
 * Tops of relief and grounds of what is sunk, where they are level: they face as the seat beneath does.
 */
import type { BandSurface } from "../../../band/surface/surface.js";
import type { Pattern } from "../../../pattern/laid-out.js";
import type { FlatBody, ReliefPolygon } from "../../../relief/flat-body.js";
import { type KnownSurface, mostLean, reachOf } from "./known-surface.js";

/** @param tolerance by how much the mesh's chords stand off, mm */
export function knownLevels(pattern: Pattern, wrap: BandSurface, tolerance: number): KnownSurface {
  const levels = [...new Set(pattern.bodies.flatMap(levelsOf))];
  if (levels.length === 0) return () => {};
  const reach = reachOf(tolerance);
  const [low, high] = [Math.min(...levels) - reach, Math.max(...levels) + reach];
  // A chord across the seat may follow any of its curves; those tighter than the finger are left to the facets.
  const lean = mostLean([wrap.referenceRadius, wrap.referenceRadius], tolerance);
  return (x, y, z, found) => {
    const [u, v, h] = wrap.inverse(x, y, z);
    if (h < low || h > high || Math.abs(v) > wrap.seatLength / 2) return;
    if (!levels.some((level) => Math.abs(h - level) <= reach)) return;
    const [nx, ny, nz] = wrap.normal(u, v);
    found(nx, ny, nz, lean);
  };
}

/** Heights of a body's level faces over the seat, mm. */
function levelsOf({ mode, top, rise, fade }: FlatBody): number[] {
  if (mode === "pierced" || rise !== undefined || fade !== undefined) return [];
  return top.filter(isLevel).map(([[[, , h]]]) => (mode === "sunk" ? -h : h));
}

function isLevel(polygon: ReliefPolygon): boolean {
  const h = polygon[0]?.[0]?.[2];
  return h !== undefined && polygon.every((ring) => ring.every((point) => point[2] === h));
}
