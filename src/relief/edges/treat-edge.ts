/**
 * Sets lobes along a region's outline, or bites them out of it.
 *
 * Each outline is parted at its corners, and each part takes the number of lobes that comes nearest to the wanted width.
 * Outlines without corners take them all the way round; those that their symmetry brings on to themselves an even number,
 * from a mirror on, so that the edge is as symmetric as the outline.
 */
import { AnnuletError, type Warn } from "../../base/errors.js";
import type { Point2 } from "../../base/math/point.js";
import { radians, showLength } from "../../base/units.js";
import type { EdgeSpec } from "../../design/pattern/edge.js";
import { findCorners } from "../../flat/corners.js";
import { toGrid } from "../../flat/grid.js";
import { contains, type GridRegion, ringArea, subtract, unite } from "../../flat/polygons.js";
import { type RunLine, runLines } from "../../flat/runs.js";
import { copiesAlong, type Strip } from "../../flat/strip.js";
import { isCyclic, type Walk, walkLine } from "../../flat/walk-line.js";
import { EDGES } from "./index.js";

/** Corners and directions of an outline are felt over this share of a lobe. */
const FEEL = 0.125;

/** Lobes reach this far over the outline on its other side, mm, so that they truly overlap the region. */
const OVERLAP = 5e-3;

/** Most lobes of one period: far more than any edge that can be cast. */
const MOST_LOBES = 5000;

/** A real width that differs from the wanted one by more than this share is worth knowing. */
const UNEVEN = 0.25;

/**
 * The region with its edge.
 *
 * @param where the edge's place in the document
 * @throws AnnuletError `edge-too-deep` where lobes come out too narrow for their depth, `edge-too-fine`
 */
export function treatEdge(strip: Strip, region: GridRegion, edge: EdgeSpec, where: string, warn: Warn): GridRegion {
  const lines = runLines(
    strip,
    region.map((points) => ({ points: [...points], closed: true })),
  );
  const parts = lines.flatMap((line) => partsOf(strip, line, edge));
  const count = parts.reduce((sum, part) => sum + part.count, 0);
  if (count > MOST_LOBES) throw tooFine(edge, count, where);
  const narrowest = Math.min(...parts.map(widthOf));
  if (edge.depth > EDGES[edge.form].deepest(narrowest)) throw tooDeep(edge, narrowest, where);
  warnUneven(edge, parts, where, warn);
  const lobes = parts.flatMap((part) => lobesOf(strip, region, part, edge));
  const everywhere = lobes.flatMap((lobe) => copiesAlong(strip, lobe));
  return edge.side === "out" ? unite([...region, ...everywhere]) : subtract(region, unite(everywhere));
}

/** A span of an outline from corner to corner, or all of it. */
interface Part {
  readonly walk: Walk;
  /** mm along the outline; the end may lie past its length. */
  readonly from: number;
  readonly to: number;
  /** Whether it ends in corners. */
  readonly bounded: boolean;
  readonly count: number;
}

function widthOf({ from, to, count }: Part): number {
  return (to - from) / count;
}

function partsOf(strip: Strip, line: RunLine, { width, cornerAngle }: EdgeSpec): Part[] {
  const walk = walkLine(line);
  const stationOf = (at: number) => {
    const side = Math.min(Math.floor(at), walk.stations.length - 2);
    return walk.stations[side] + (at - side) * (walk.stations[side + 1] - walk.stations[side]);
  };
  const corners = findCorners(line, { angle: radians(cornerAngle), reach: FEEL * width }).map(({ at }) =>
    stationOf(at),
  );
  corners.sort((a, b) => a - b);
  if (corners.length === 0 && isCyclic(line)) {
    // A glide brings an outline on to the one on the other side of the band, half a tile on.
    const glides = line.kind === "strand" && strip.group.operations.some(({ shift }) => shift !== 0);
    const step = line.even || glides ? 2 : 1;
    const count = step * Math.max(1, Math.round(walk.length / width / step));
    return [{ walk, from: 0, to: walk.length, bounded: false, count }];
  }
  const stops = isCyclic(line) ? [...corners, corners[0] + walk.length] : [0, ...corners, walk.length];
  return stops.slice(1).map((to, i): Part => {
    const from = stops[i];
    return { walk, from, to, bounded: true, count: Math.max(1, Math.round((to - from) / width - HALF_LESS)) };
  });
}

/** Where two numbers of lobes are as near, the smaller is taken, whatever the last digit says: mirrored parts are alike. */
const HALF_LESS = 1e-6;

/** The lobes of a part, as rings that overlap the outline. */
function lobesOf(strip: Strip, region: GridRegion, part: Part, { form, depth, side }: EdgeSpec): GridRegion {
  const { walk, from, to, bounded, count } = part;
  const width = widthOf(part);
  const profile = EDGES[form].draw({ width, depth, tolerance: strip.artTolerance });
  const feel = FEEL * width;
  const normalAt = (s: number): Point2 => {
    const [before, after] = bounded ? [Math.max(from, s - feel), Math.min(to, s + feel)] : [s - feel, s + feel];
    const [a, b] = [walk.pointAt(before), walk.pointAt(after)];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return length === 0 ? [0, 0] : [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  };
  const beside = (s: number, out: number): Point2 => {
    const [[u, v], [nu, nv]] = [walk.pointAt(s), normalAt(s)];
    return [u + out * nu, v + out * nv];
  };
  const [probe] = toGrid(strip.grid, [beside((from + to) / 2, OVERLAP)]);
  const towards = isInside(region, probe) === (side === "out") ? -1 : 1;
  return Array.from({ length: count }, (_, i) => {
    const start = from + i * width;
    const along = withVertices(walk, profile, start);
    const front = along.map(([s, out]) => beside(s, towards * out));
    const back = along.map(([s]) => beside(s, -towards * OVERLAP)).reverse();
    const ring = toGrid(strip.grid, [...front, ...back]);
    return ringArea(ring) < 0 ? ring.reverse() : ring;
  });
}

/** The lobe's line from a place of the outline on, with the outline's own vertices between its points. */
function withVertices(walk: Walk, profile: readonly Point2[], start: number): Point2[] {
  const { stations, length } = walk;
  const found: Point2[] = [];
  profile.forEach(([x, out], i) => {
    if (i > 0) {
      const [x0, out0] = profile[i - 1];
      for (let round = Math.floor((start + x0) / length); round * length < start + x; round++) {
        for (const station of stations) {
          const at = station + round * length - start;
          if (at > x0 && at < x) found.push([start + at, out0 + ((out - out0) * (at - x0)) / (x - x0)]);
        }
      }
    }
    found.push([start + x, out]);
  });
  return found;
}

function isInside(region: GridRegion, point: GridRegion[number][number]): boolean {
  return region.reduce((sum, ring) => sum + (contains(ring, point) ? Math.sign(ringArea(ring)) : 0), 0) > 0;
}

function warnUneven(edge: EdgeSpec, parts: readonly Part[], where: string, warn: Warn): void {
  const worst = parts.reduce((most, part) => (apart(part, edge) > apart(most, edge) ? part : most), parts[0]);
  if (apart(worst, edge) <= UNEVEN) return;
  warn({
    code: "edge-uneven",
    message: `a stretch of the outline ${showLength(worst.to - worst.from)} long takes ${worst.count} of these lobes, each ${showLength(widthOf(worst))} wide instead of ${showLength(edge.width)}`,
    path: `${where}.width`,
    value: edge.width,
    hint: "choose a width that divides the outline's stretches better, or a larger cornerAngle",
  });
}

function apart(part: Part, { width }: EdgeSpec): number {
  return Math.abs(widthOf(part) / width - 1);
}

function tooDeep({ form, depth }: EdgeSpec, narrowest: number, where: string): AnnuletError {
  return new AnnuletError({
    code: "edge-too-deep",
    message: `${form} ${showLength(depth)} deep does not fit on lobes that come out ${showLength(narrowest)} wide`,
    path: `${where}.depth`,
    value: depth,
    allowed: `at most ${showLength(Math.floor(EDGES[form].deepest(narrowest) * 1000) / 1000)}`,
    hint: "make them shallower or wider, or raise the cornerAngle so that short stretches count as one",
  });
}

function tooFine({ width }: EdgeSpec, count: number, where: string): AnnuletError {
  return new AnnuletError({
    code: "edge-too-fine",
    message: `the edge asks for ${count} lobes in one period`,
    path: `${where}.width`,
    value: width,
    allowed: `at most ${MOST_LOBES}`,
    hint: "make the lobes wider",
  });
}
