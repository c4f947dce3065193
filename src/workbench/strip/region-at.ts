/**
 * Which region lies at a place of the tile.
 */
import type { FlatRegion } from "../../index.js";
import type { FlatPoint } from "./flat-view.js";

/** Whether a place lies in what rings enclose, by the even-odd rule. */
export function isInside([u, v]: FlatPoint, rings: FlatRegion["rings"]): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let i = 0, before = ring.length - 1; i < ring.length; before = i++) {
      const [au, av] = ring[i];
      const [bu, bv] = ring[before];
      if (av > v !== bv > v && u < ((bu - au) * (v - av)) / (bv - av) + au) inside = !inside;
    }
  }
  return inside;
}

/** The topmost region at a place, mm from the own drawing's left border and the lane's middle; copies count as it. */
export function regionAt(regions: readonly FlatRegion[], [u, v]: FlatPoint, period: number): FlatRegion | undefined {
  const within = u - period * Math.floor(u / period);
  return regions.findLast(({ rings }) => isInside([within, v], rings));
}
