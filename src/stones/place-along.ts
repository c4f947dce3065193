/**
 * Stones along a track, at even clear gaps.
 */
import { AnnuletError } from "../base/errors.js";
import { radians, showLength } from "../base/units.js";
import { GAP_DEFAULT } from "../design/stones/stone-place.js";
import { heightsOf, type Stone } from "../gems/stone.js";
import type { DraftStone } from "./draft-stone.js";
import { stonesAlong } from "./row-sizes.js";
import { type RowFit, solveRow } from "./space-row.js";
import { frameOn } from "./spot.js";
import { girdleBody, type StoneShapes } from "./stone-shape.js";
import type { Track } from "./track.js";

/** What a row is asked to be. */
export interface RowAsk {
  readonly stone: Stone;
  readonly shapes: StoneShapes;
  readonly gap?: number | undefined;
  readonly count?: number | undefined;
  readonly to?: number | undefined;
  /** Degrees from the row's way. */
  readonly turn: number;
  /** mm from the surface up to the table, by the stone's heights. */
  readonly levelOf: (stone: Stone) => number;
  /** Number of the row in its group. */
  readonly row: number;
  readonly most: number;
  /** Where the place stands in the document. */
  readonly where: string;
}

/** A row with its stones. */
export interface PlacedRow {
  readonly stones: readonly DraftStone[];
  /** With fewer stones, as made, with more; those that do not fit are left out. */
  readonly choices: readonly RowChoice[];
  /** mm in space. */
  readonly length: number;
  readonly closed: boolean;
}

/** One number of stones that a row could have. */
export interface RowChoice {
  readonly count: number;
  /** Clear gap between girdles in space, mm; undefined of a single stone. */
  readonly gap: number | undefined;
  readonly made: boolean;
}

/**
 * Places a row along a track.
 *
 * @throws AnnuletError `stones-row-full` where not so many fit; `too-many-stones`
 */
export function placeAlong(track: Track, ask: RowAsk): PlacedRow {
  const { shapes, count, most, where, row } = ask;
  const { length, closed } = track;
  const stoneAt = stonesAlong(ask.stone, ask.to, closed);
  const turn = radians(ask.turn);
  const girdlesBy = (spotAt: Track["spotAt"]) => (s: number) => {
    const stone = stoneAt(s / length);
    return girdleBody(shapes.of(stone), frameOn(spotAt(s), ask.levelOf(stone) - heightsOf(stone).crown, turn));
  };
  const solved = solveRow({
    length,
    closed,
    even: track.even && stoneAt(0) === stoneAt(HALF),
    pairs: track.pairs,
    girdleAt: girdlesBy(track.nearlyAt),
    ...(track.nearlyAt === track.spotAt ? {} : { exactAt: girdlesBy(track.spotAt) }),
    gap: ask.gap ?? GAP_DEFAULT,
    count,
    most,
  });
  const { fit } = solved;
  if (fit === undefined) throw full(count ?? most + 1, solved.room, ask);
  const choice = (one: RowFit | undefined, made: boolean): RowChoice[] =>
    one === undefined ? [] : [{ count: one.count, gap: one.gap, made }];
  return {
    stones: fit.places.map((s, index): DraftStone => {
      const place = { row, index, count: fit.count, closed };
      return { spot: track.spotAt(s), turn, stone: stoneAt(s / length), row: place };
    }),
    choices: [...choice(solved.fewer, false), ...choice(fit, true), ...choice(solved.more, false)],
    length,
    closed,
  };
  function full(asked: number, room: number | undefined, { stone }: RowAsk): AnnuletError {
    if (asked > most) return tooManyStones(asked, most, where);
    const size = showLength(stone.length);
    return new AnnuletError({
      code: "stones-row-full",
      message: `${asked} stones of ${size} do not fit into the row, which is ${showLength(length)} long: they would stand in each other`,
      path: `${where}.count`,
      value: asked,
      allowed: `at most ${room}`,
      hint: "take fewer or smaller stones, or give a gap instead",
    });
  }
}

/** A share of the row that is not its start. */
const HALF = 0.5;

/** What to say of more stones than are placed. */
export function tooManyStones(asked: number, most: number, path: string): AnnuletError {
  return new AnnuletError({
    code: "too-many-stones",
    message: `the design asks for ${asked} stones or more`,
    path,
    value: asked,
    allowed: `at most ${most}`,
    hint: "make the stones larger or fewer",
  });
}
