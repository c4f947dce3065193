/**
 * Which region of a body lies at a place: regions whose tops are alike are one body.
 */
import type { BandSurface } from "../../band/surface/surface.js";
import { nearestShare } from "../../base/math/nearest-share.js";
import type { FlatBody, ReliefPolygon } from "../../relief/flat-body.js";
import { HeightIndex } from "../proof/height-index.js";
import { heightsAt } from "../proof/intent.js";

/** A region of the document. */
export interface NamedRegion {
  readonly path: string;
  readonly names: readonly string[];
}

/** `pattern.regions[2].section.height` → `pattern.regions[2]`: bodies tell of what is sunk where its depth stands. */
export function regionPath(path: string): string {
  return /^.*regions\[\d+\]/.exec(path)?.[0] ?? path;
}

/** mm along the band after which a body comes again. */
export function periodOf({ seam, period }: Pick<FlatBody, "seam" | "period">, wrap: BandSurface): number {
  return seam === undefined ? (period ?? wrap.round) : seam[1] - seam[0];
}

/** Tells the region at (u, v): of those that lie there the last, where none does the nearest. */
export function regionsOf(body: FlatBody, wrap: BandSurface): (u: number, v: number) => NamedRegion {
  const { members } = body;
  if (members === undefined) {
    const only = { path: regionPath(body.path), names: body.names };
    return () => only;
  }
  const period = periodOf(body, wrap);
  const known = members.map(({ name, path, outline }) => {
    const region = { path, names: [name] };
    return { region, outline, index: new HeightIndex([outline]) };
  });
  return (u, v) => {
    const within = known.findLast(({ index }) => heightsAt(index, period, u, v) !== undefined);
    if (within !== undefined) return within.region;
    const ways = known.map(({ outline }) => wayTo(outline, period, u, v));
    return known[ways.indexOf(Math.min(...ways))].region;
  };
}

/** mm from a place to a polygon's rings, wherever they come again. */
function wayTo(outline: ReliefPolygon, period: number, u: number, v: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const ring of outline) {
    ring.forEach(([au, av], i) => {
      const [bu, bv] = ring[(i + 1) % ring.length];
      const at = u - period * Math.round((u - au) / period);
      for (const x of [at - period, at, at + period]) {
        const share = nearestShare(x - au, v - av, bu - au, bv - av);
        least = Math.min(least, Math.hypot(x - au - share * (bu - au), v - av - share * (bv - av)));
      }
    });
  }
  return least;
}
