/**
 * The top of a plain zone that is filled up to the rails: it faces along the radius, whatever the floor beneath does.
 */
import type { BandSurface } from "../../../band/surface/surface.js";
import { extent } from "../../../base/math/extent.js";
import type { Pattern } from "../../../pattern/laid-out.js";
import { type KnownSurface, mostLean, reachOf } from "./known-surface.js";

/** @param tolerance by how much the mesh's chords stand off, mm */
export function knownFilling({ bodies }: Pattern, wrap: BandSurface, tolerance: number): KnownSurface {
  const filling = bodies.find((body) => body.filling === true);
  if (filling === undefined) return () => {};
  const points = filling.outline.flat(2);
  const [[first], [from, to]] = [points, extent(points.map(([u]) => u))];
  const line = wrap.lineAt(wrap.angleAt(from));
  const [low, high] = extent(points.map(([, v]) => line.point(v, 0)[0]));
  const radius = line.point(first[1], 0)[1] + first[2] / line.normal(first[1])[1];
  const reach = reachOf(tolerance);
  const lean = mostLean([radius, Number.POSITIVE_INFINITY], tolerance);
  return (x, y, z, found) => {
    const r = Math.sqrt(x * x + y * y);
    if (Math.abs(r - radius) > reach || z < low || z > high) return;
    const u = wrap.uAt(Math.atan2(y, x));
    const along = u + wrap.round * Math.ceil((from - reach - u) / wrap.round);
    if (along <= to + reach) found(x / r, y / r, 0, lean);
  };
}
