/**
 * How wide a part is that runs out to a point: on average over a set length at its end, whatever width is asked for.
 */
import type { GridPath, GridPoint } from "../../flat/grid.js";
import { clipWithin, contains, type GridRegion, intersect, ringArea } from "../../flat/polygons.js";

/** The length at a point's end over which its width is taken, mm. Chosen. */
const TIP_LENGTH = 0.5;

/** Corners of the circle about a point. */
const CORNERS = 64;

/** The corner of a ring that is farthest from a place. */
export function farthestFrom(ring: GridPath, place: GridPoint): GridPoint {
  const away = ({ x, y }: GridPoint) => Math.hypot(x - place.x, y - place.y);
  return ring.reduce((most, point) => (away(point) > away(most) ? point : most));
}

/**
 * Mean width of what of the region lies within `TIP_LENGTH` of a point of it and hangs together with that, mm: the area over
 * the length. Of a wedge that is half its width at that length.
 */
export function tipWidth(region: GridRegion, tip: GridPoint, scale: number): number {
  const reach = TIP_LENGTH * scale;
  const box = { left: tip.x - reach, right: tip.x + reach, low: tip.y - reach, high: tip.y + reach };
  const disc = Array.from({ length: CORNERS }, (_, i): GridPoint => {
    const angle = (2 * Math.PI * i) / CORNERS;
    return { x: Math.round(tip.x + reach * Math.cos(angle)), y: Math.round(tip.y + reach * Math.sin(angle)) };
  });
  const near = intersect(clipWithin(region, box, 0), [disc]);
  const distance = (ring: GridPath) => Math.min(...ring.map(({ x, y }) => Math.hypot(x - tip.x, y - tip.y)));
  const [own] = near.filter((ring) => ringArea(ring) > 0).sort((a, b) => distance(a) - distance(b));
  if (own === undefined) return 0;
  const holes = near.filter((ring) => ringArea(ring) < 0 && contains(own, ring[0]));
  const area = ringArea(own) + holes.reduce((sum, ring) => sum + ringArea(ring), 0);
  return area / scale / reach;
}
