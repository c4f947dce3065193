/**
 * Where the other lanes lie beside the one whose tile is shown as one's own: all of them on one strip, each with its own tiles.
 */
import type { StripLayout } from "./strip-layout.js";

/** What is needed of a lane's own layout. */
export type LaneStretch = Pick<StripLayout, "start" | "around" | "period" | "copies" | "from" | "to">;

const ROUND = 360;

/** By how much a lane's own tile lies beside the shown one's, mm along the band: the shorter way round. */
export function laneShift(lane: LaneStretch, shown: LaneStretch): number {
  const turned = (((lane.start - shown.start) % ROUND) + ROUND) % ROUND;
  return ((turned > ROUND / 2 ? turned - ROUND : turned) / ROUND) * shown.around;
}

/**
 * A lane laid out over the strip that is shown: where its tiles go all the way round, as many of them as reach over it; else its own.
 *
 * @param whole whether the lane's tiles go on from the last to the first
 */
export function overStrip<Layout extends LaneStretch>(lane: Layout, shown: LaneStretch, whole: boolean): Layout {
  const shift = laneShift(lane, shown);
  if (!whole) return lane;
  const first = Math.floor((shown.from - shift) / lane.period + NEARLY);
  const last = Math.ceil((shown.to - shift) / lane.period - NEARLY);
  const copies = Array.from({ length: Math.max(1, last - first) }, (_, i) => (first + i) * lane.period);
  return { ...lane, copies, from: copies[0], to: copies[copies.length - 1] + lane.period };
}

/** A tile that reaches over the strip's end by less than this of its width does not: rounding. */
const NEARLY = 1e-6;

/** The lane in which a place lies, or the nearest to it; v counts from the seat's middle, mm. */
export function laneAt<Lane extends { readonly laneMiddle: number; readonly seatLength: number }>(
  lanes: readonly Lane[],
  v: number,
): Lane | undefined {
  const away = ({ laneMiddle, seatLength }: Lane): number => Math.max(0, Math.abs(v - laneMiddle) - seatLength / 2);
  return lanes.reduce<Lane | undefined>(
    (near, lane) => (near === undefined || away(lane) < away(near) ? lane : near),
    undefined,
  );
}
