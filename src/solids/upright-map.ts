/**
 * The map of what stands upright: heights go along the radius and not along the surface's normal, so that walls never lean
 * over, and neighbours on a hollow never meet. So much higher that a level top is as far from a straight slope as the height
 * says. Draft leans walls in from the radius, on a slope by a little less than it says; a wall never leans the other way.
 */
import type { BandSurface } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import type { FlatBody } from "../relief/flat-body.js";

/** Least share of the surface's normal that must lie along the radius: steeper, and heights along it are over twice as long. */
const LEAST_FACING = 0.5;

/** (u, v, h) to space. */
export function uprightForward({ lineAt, angleAt }: BandSurface): BandSurface["forward"] {
  return (u, v, h) => {
    const angle = angleAt(u);
    const line = lineAt(angle);
    const [w, foot] = line.point(v, 0);
    const r = foot + h / line.normal(v)[1];
    return [r * Math.cos(angle), r * Math.sin(angle), w];
  };
}

/** How a body's points go to space. */
export function forwardOf({ upright }: Pick<FlatBody, "upright">, wrap: BandSurface): BandSurface["forward"] {
  return upright ? uprightForward(wrap) : wrap.forward;
}

/** Least share of the surface's normal along the radius over a body, of one that is not upright 1: its foot lies that much higher. */
export function leastFacing({ upright, outline }: FlatBody, { lineAt, angleAt }: BandSurface): number {
  if (!upright) return 1;
  return outline.flat(2).reduce((least, [u, v]) => Math.min(least, lineAt(angleAt(u)).normal(v)[1]), 1);
}

/** @throws AnnuletError `seat-too-steep` where an upright body reaches a slope of over 60° */
export function requireFacing({ upright, outline, path }: FlatBody, { lineAt, angleAt }: BandSurface): void {
  if (!upright) return;
  const steep = outline.flat(2).find(([u, v]) => lineAt(angleAt(u)).normal(v)[1] < LEAST_FACING);
  if (steep === undefined) return;
  throw new AnnuletError({
    code: "seat-too-steep",
    message: `the seat leans by more than 60° at v ${showLength(steep[1])}, where upright walls would hardly stand on it`,
    path,
    hint: 'keep upright regions to where the seat faces outward, or leave "upright" out',
  });
}
