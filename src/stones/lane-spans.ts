/**
 * The spans of tiles that a lane of the pattern has, for what is drawn in a tile.
 */
import { FULL_COVER, type LaneFit } from "../band/fit/fit.js";
import { laneFits } from "../band/fit/fit-lanes.js";
import { AnnuletError } from "../base/errors.js";
import { type Lane, lanesOf, noSuchLane } from "../design/lanes.js";
import { type Motion, STAY } from "../flat/motion.js";
import type { StripFit } from "../flat/strip.js";
import { spansOf } from "../pattern/spans.js";
import type { Ground } from "./ground.js";

/** A lane with its spans. */
export interface LaneSpans {
  readonly lane: Lane;
  readonly laneFit: LaneFit;
  /** Each span is as this, from u = 0, v from the lane's middle line. */
  readonly span: StripFit;
  /** Where the spans lie on the seat. */
  readonly places: readonly Motion[];
  /** Whether the tiles go all the way round. */
  readonly periodic: boolean;
}

/**
 * The spans of the lane that a place names.
 *
 * @param where the place's own place in the document
 * @throws AnnuletError `no-pattern`, `no-such-lane`
 */
export function laneSpans({ pattern, fit, seatLength }: Ground, name: string | undefined, where: string): LaneSpans {
  if (pattern === undefined || fit === undefined) {
    throw new AnnuletError({
      code: "no-pattern",
      message: "the stones stand in the tile, but the design has no pattern and so no tile",
      path: `${where}.form`,
      allowed: '"row", "single" on a band without pattern',
      hint: 'add "pattern": {} for a tile as square as the seat is long',
    });
  }
  const lanes = lanesOf(pattern);
  const at = name === undefined ? 0 : lanes.findIndex((lane) => lane.name === name);
  if (at === -1) throw noSuchLane(name, lanes, `${where}.lane`);
  const laneFit = laneFits(fit, seatLength)[at];
  const { fit: span, starts } = spansOf(laneFit);
  return {
    lane: lanes[at],
    laneFit,
    span,
    places: starts.map((u) => ({ ...STAY, u, v: laneFit.v })),
    periodic: span.cover === FULL_COVER,
  };
}
