/**
 * Where a band may be cut: holes counted, edges kept, nothing let fall out.
 */
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { ringBox } from "./box.js";
import { type GridRegion, ringArea } from "./polygons.js";
import { halfAt } from "./seat-outline.js";
import { clearRing, inFirstPeriod, type Strip } from "./strip.js";

/** What must stand between a cut and the seat's edge, mm: the least wall of the profile's model, chosen. */
export const EDGE_WALL = 0.1;

/** @throws AnnuletError `cut-at-edge` where a cut comes too near to the rails or the edge of the band */
export function requireEdgeWall(strip: Strip, region: GridRegion, path: string): void {
  let most = 0;
  for (const ring of region) {
    for (const { x, y } of ring) {
      const half = strip.edge === undefined ? strip.halfSeat : Math.min(strip.halfSeat, halfAt(strip.edge, x));
      most = Math.max(most, Math.abs(y) + strip.halfSeat - half);
    }
  }
  const left = (strip.halfSeat - most) / strip.grid.scale;
  if (left >= EDGE_WALL) return;
  throw new AnnuletError({
    code: "cut-at-edge",
    message: `what is cut out ${left > 0 ? `comes within ${showLength(left)} of` : "reaches"} the edge of the seat, where the rails or the band's edge stand`,
    path,
    value: Number((most / strip.grid.scale).toFixed(3)),
    allowed: `within ${showLength(Math.max(0, Math.floor((strip.halfSeat / strip.grid.scale - EDGE_WALL) * 1000) / 1000))} of the seat's middle line, its broken or drafted edge included`,
    hint: "draw it lower, break its edges less, or make the band wider",
  });
}

/**
 * The holes that a pierced region makes round the whole band.
 *
 * @throws AnnuletError `hole-parts-band` where a hole runs round the band; `hole-frees-metal` where it surrounds metal
 */
export function countHoles(strip: Strip, region: GridRegion, path: string): number {
  const near = region.filter((ring) => clearRing(strip, ring));
  if (near.some((ring) => ringArea(ring) < 0)) {
    throw new AnnuletError({
      code: "hole-frees-metal",
      message: "the holes surround a piece of the band, which would fall out",
      path,
      hint: "leave a bridge that holds the inner piece",
    });
  }
  if (!strip.periodic) return region.length;
  const [first, last] = strip.complete;
  const round = near.some((ring) => {
    const { left, right } = ringBox(ring);
    return right - left >= last - first;
  });
  if (round) {
    throw new AnnuletError({
      code: "hole-parts-band",
      message: "the hole runs all the way round and would cut the band in two",
      path,
      hint: "leave bridges between the holes",
    });
  }
  return (strip.repeats / strip.cycle) * near.filter((ring) => inFirstPeriod(strip, ring)).length;
}
