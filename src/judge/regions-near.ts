/**
 * Which regions of the pattern stand at places of the solid, so that what is wrong there can name them.
 */
import type { BandSurface } from "../band/surface/surface.js";
import { nearestShare } from "../base/math/nearest-share.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { encloses } from "../base/math/polygon.js";
import type { FlatBody, ReliefPolygon } from "../relief/flat-body.js";

type Body = Pick<FlatBody, "path" | "names" | "outline" | "seam" | "period">;

/** A region as far as this from a place may be what is wrong there, mm; chosen. */
const REACH = 0.5;

/**
 * The regions at places, or the nearest to each within half a millimetre, as `pattern.regions[1] (petal)`; each once.
 *
 * @param bodies of the pattern
 * @param wrap the seat's map
 */
export function regionsNear(places: readonly Point3[], bodies: readonly Body[], wrap: BandSurface): string[] {
  const found = new Set<string>();
  for (const place of places) {
    const [u, v] = wrap.inverse(...place);
    const ways = bodies.map((body) => ({ body, way: wayTo(body, [u, v], wrap.round) }));
    const nearest = ways.reduce((least, { way }) => Math.min(least, way), REACH);
    for (const { body, way } of ways) if (way <= nearest) found.add(nameOf(body));
  }
  return [...found];
}

function nameOf({ path, names }: Body): string {
  return names.length === 0 ? path : `${path} (${names.join(", ")})`;
}

/** mm from a place to a body, wherever that comes again; 0 within it. */
function wayTo({ outline, seam, period }: Body, [u, v]: Point2, round: number): number {
  const again = period ?? (seam === undefined ? round : seam[1] - seam[0]);
  const low = outline.flat(2).reduce((least, [x]) => Math.min(least, x), Number.POSITIVE_INFINITY);
  const first = u - again * Math.floor((u - low) / again);
  // Beside it on both sides too: it may reach over the end of what comes again.
  const ways = [first - again, first, first + again].flatMap((x) =>
    outline.map((polygon) => wayToPolygon(polygon, [x, v])),
  );
  return Math.min(Number.POSITIVE_INFINITY, ...ways);
}

function wayToPolygon(polygon: ReliefPolygon, [u, v]: Point2): number {
  const rings = polygon.map((ring) => ring.map(([x, y]): Point2 => [x, y]));
  if (rings.filter((ring) => encloses(ring, [u, v])).length % 2 === 1) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const ring of rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length];
      const share = nearestShare(u - ax, v - ay, bx - ax, by - ay);
      least = Math.min(least, Math.hypot(u - ax - share * (bx - ax), v - ay - share * (by - ay)));
    });
  }
  return least;
}
