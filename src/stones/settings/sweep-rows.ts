/**
 * A section swept along each row of a group, all round or in a sector of the round.
 */
import { vec3 } from "gl-matrix";
import type { Point2 } from "../../base/math/point.js";
import { isWholeRound, type Sector } from "../../base/math/round.js";
import { TURN } from "../../base/units.js";
import type { Mesh } from "../../mesh/mesh.js";
import { acrossOf, intoSpace } from "../frame.js";
import type { SetGroupOptions, SetStone } from "./group.js";
import { placedPart, type SettingPart } from "./parts-of-setting.js";
import { type Row, rowsOf } from "./rows.js";
import { type Station, stationsOf } from "./stations.js";
import { sweepSections } from "./swept.js";

export interface RowSweep {
  readonly kind: SettingPart["kind"];
  /** How far a row goes on beyond the middle of its last stone, mm. */
  readonly beyond: (stone: SetStone) => number;
  /** What the section depends on at a stone: `way`, the row's direction in the stone's coordinates; the stone's number. */
  readonly sizesAt: (stone: SetStone, way: Point2, number: number) => readonly number[];
  /** The section of such sizes, (y, z) across the row. */
  readonly section: (sizes: readonly number[]) => readonly Point2[];
}

export function sweepRows(stones: readonly SetStone[], options: SetGroupOptions, sweep: RowSweep): SettingPart[] {
  const ways = waysOf(stones);
  return rowsOf(stones).map((row) => rowPart(row, stones, ways, options, sweep));
}

/** For each stone the direction of its row in its own coordinates: its length where it stands alone. */
export function waysOf(stones: readonly SetStone[]): Point2[] {
  const ways = stones.map((): Point2 => [1, 0]);
  for (const { stones: row, closed } of rowsOf(stones)) {
    row.forEach((number, k) => {
      const last = row.length - 1;
      const [before, after] = closed
        ? [row[(k + last) % row.length], row[(k + 1) % row.length]]
        : [row[Math.max(0, k - 1)], row[Math.min(last, k + 1)]];
      if (before === after) return;
      const { frame } = stones[number];
      const way = vec3.subtract([0, 0, 0], stones[after].frame.at, stones[before].frame.at);
      const [x, y] = [vec3.dot(way, frame.along), vec3.dot(way, acrossOf(frame))];
      ways[number] = [x / Math.hypot(x, y), y / Math.hypot(x, y)];
    });
  }
  return ways;
}

function rowPart(
  { stones: row, closed }: Row,
  stones: readonly SetStone[],
  ways: readonly Point2[],
  { facets, startAngle }: SetGroupOptions,
  { kind, beyond, sizesAt, section }: RowSweep,
): SettingPart {
  const far = Math.max(...[row[0], row[row.length - 1]].map((i) => beyond(stones[i])));
  const knots = row.map((i) => ({
    at: stones[i].frame.at,
    out: stones[i].frame.out,
    sizes: sizesAt(stones[i], ways[i], i),
  }));
  const stations =
    row.length === 1
      ? aloneStations(stones[row[0]], knots[0].sizes, far)
      : stationsOf(knots, { closed, beyond: far, facets, startAngle });
  const mesh = (some: readonly Station[], round: boolean) =>
    sweepSections(
      some.map(({ frame, sizes }) => ({ frame, outline: section(sizes) })),
      round,
    );
  if (!closed) return placedPart(kind, mesh(stations, false));
  return {
    kind,
    bodies: (sector): readonly Mesh[] => {
      if (sector === undefined || isWholeRound(sector)) return [mesh(stations, true)];
      return [mesh(within(stations, sector), false)];
    },
  };
}

/** One stone's own line. */
function aloneStations({ frame }: SetStone, sizes: readonly number[], far: number): Station[] {
  return [-far, far].map((x) => ({ frame: { ...frame, at: intoSpace(frame, [x, 0, 0]) }, sizes }));
}

/** Stations beyond a sector on either side that go with it. */
const ASIDE = 2;

/** The stations of a closed row over a sector, and a few on both sides. */
function within(stations: readonly Station[], { from, to }: Sector): Station[] {
  const count = stations.length;
  const past = (i: number, start: number) => {
    const [x, y] = stations[i].frame.at;
    const angle = Math.atan2(y, x) - start;
    return angle - TURN * Math.floor(angle / TURN);
  };
  const first = stations.reduce((best, _, i) => (past(i, from) < past(best, from) ? i : best), 0);
  const inside = stations.filter((_, i) => past(i, from) <= to - from).length;
  return Array.from(
    { length: Math.min(count, inside + 2 * ASIDE) },
    (_, i) => stations[(first - ASIDE + i + count) % count],
  );
}
