/**
 * Fit: how many whole tiles go round, and what gives way so that they do.
 *
 * With C = 2πR · cover / 360 at the reference radius R, N repeats make tiles t = C / N wide, and m rows of aspect a
 * need a seat m·a·t long. R is the seat's mean radius, so that by Pappus' theorem the pattern's area is C times the
 * seat's length exactly. Where the tile is held, the band's width is solved for: R and the seat's length both move with
 * the width, so a root is found on the real profile.
 */
import { AnnuletError } from "../../base/errors.js";
import { isBeyond } from "../../base/limits.js";
import { narrowRoot, type Sample } from "../../base/math/root.js";
import { showLength, TURN } from "../../base/units.js";
import { type CycleSpec, cycleLength } from "../../design/cycle.js";
import type { FitSpec } from "../../design/pattern/fit.js";
import { FULL_COVER, repeatNumbers, requireNumber } from "../../design/repeat-numbers.js";

export { FULL_COVER } from "../../design/repeat-numbers.js";

/** What is asked of a fit. */
export interface FitAsk extends FitSpec {
  /** Tiles after which the art comes again; the repeats that go all the way round are whole cycles. Default 1. */
  readonly cycle?: CycleSpec;
  /** Tiles at the top whose place a medallion takes. Default 0. */
  readonly medallion?: number;
  /** How many numbers of repeats are tried on each side of the nearest. Default 4. */
  readonly reach?: number;
  /** Where what is fitted stands in the document. Default pattern. */
  readonly path?: string;
}

/** What a fit needs to know of a band of some width. */
export interface SeatMeasure {
  /** Length of the seat across the band, mm. */
  readonly seatLength: number;
  /** Mean radius of the seat, mm. */
  readonly meanRadius: number;
}

/** Measures the band's seat at a width, mm; throws where no band can be built so wide. */
export type MeasureSeat = (width: number) => SeatMeasure;

/** One number of repeats, with what it would take. */
export interface FitCandidate {
  readonly repeats: number;
  /** Tile width with the tile held at its aspect, mm. */
  readonly tileWidth: number;
  readonly tileHeight: number;
  /** Band width that holds the tile at its aspect, mm; undefined where no such band can be built. */
  readonly bandWidth?: number | undefined;
  /** Stretch of the tile across the band if the band's width is kept: 1 is none. */
  readonly stretch: number;
}

/** The chosen fit. */
export interface Fit {
  readonly repeats: number;
  readonly rows: number;
  /** Tiles after which the art comes again. */
  readonly cycle: number;
  /** Tiles at the top whose place a medallion takes. */
  readonly medallion: number;
  /** Degrees of the band under the pattern. */
  readonly cover: number;
  readonly aspect: number;
  readonly hold: "tile" | "band";
  readonly tileWidth: number;
  readonly tileHeight: number;
  readonly bandWidth: number;
  /** Reference radius, mm, at which the tile is true. */
  readonly referenceRadius: number;
  /** Tile height over what its aspect asks for: 1 where the tile is held (nearly, where a freely drawn seat's length jumps). */
  readonly stretch: number;
  /** stretch − 1. */
  readonly aspectError: number;
  /** Neighbouring numbers of repeats, best first. */
  readonly candidates: readonly FitCandidate[];
  /** Each lane's own fit, the lowest first, where the pattern has lanes: this one is then the first's. */
  readonly lanes: readonly LaneFit[];
}

/** The fit of one of several lanes. A candidate's band width is the one at which the lane's share makes its tiles true. */
export interface LaneFit extends Omit<Fit, "lanes"> {
  readonly name: string;
  /** v of the lane's middle line, and its height, mm. */
  readonly v: number;
  readonly height: number;
}

/** Stretch above which a tile no longer looks as drawn: 3 %, common practice, no source. */
export const STRETCH_LIMIT = 0.03;

/** A stretch nearer to 1 than this is none: it is the width's last step, 1e-9 mm, on the narrowest of seats. */
const NO_STRETCH = 1e-7;

/** Numbers of repeats shown on each side of the nearest. */
const CANDIDATE_REACH = 4;

/** Bands are solved for within these widths, mm. */
const WIDTH_RANGE = [0.5, 60] as const;

/** The width is solved to this, mm. */
const WIDTH_STEP = 1e-9;

/**
 * Solves the fit.
 *
 * @param drawnWidth the band width in the document, mm
 * @throws AnnuletError `cycle-misfit`, `medallion-misfit` where the repeats asked for do not go with these;
 *   `fit-impossible` where no band of any width gives the repeats asked for
 */
export function solveFit(spec: FitAsk, cover: number, drawnWidth: number, measure: MeasureSeat): Fit {
  requireNumber(spec, cover);
  const drawn = measure(drawnWidth);
  const candidates = listCandidates(spec, cover, drawnWidth, drawn, measure);
  const chosen = choose(spec, candidates, () =>
    listCandidates({ ...spec, repeats: "auto" }, cover, drawnWidth, drawn, measure),
  );
  const bandWidth = spec.hold === "tile" ? (chosen.bandWidth as number) : drawnWidth;
  const seat = spec.hold === "tile" ? measure(bandWidth) : drawn;
  const tileWidth = tileAt(seat, cover, chosen.repeats);
  const tileHeight = seat.seatLength / spec.rows;
  const ratio = tileHeight / (spec.aspect * tileWidth);
  const stretch = Math.abs(ratio - 1) <= NO_STRETCH ? 1 : ratio;
  return {
    repeats: chosen.repeats,
    rows: spec.rows,
    cycle: cycleLength(spec.cycle ?? 1, chosen.repeats),
    medallion: spec.medallion ?? 0,
    cover,
    aspect: spec.aspect,
    hold: spec.hold,
    tileWidth,
    tileHeight,
    bandWidth,
    referenceRadius: seat.meanRadius,
    stretch,
    aspectError: stretch - 1,
    candidates,
    lanes: [],
  };
}

/** Tile width, mm, when `repeats` tiles share the covered circumference at the seat's mean radius. */
export function tileAt(seat: SeatMeasure, cover: number, repeats: number): number {
  return (TURN * seat.meanRadius * (cover / FULL_COVER)) / repeats;
}

function listCandidates(
  spec: FitAsk,
  cover: number,
  drawnWidth: number,
  drawn: SeatMeasure,
  measure: MeasureSeat,
): FitCandidate[] {
  const wanted = (spec.rows * spec.aspect * tileAt(drawn, cover, 1)) / drawn.seatLength;
  const candidates: FitCandidate[] = [];
  const asked = spec.repeats === "auto" ? Math.max(1, Math.round(wanted)) : spec.repeats;
  for (const repeats of repeatNumbers(spec, cover).around(asked, spec.reach ?? CANDIDATE_REACH)) {
    const need = (seat: SeatMeasure) => spec.rows * spec.aspect * tileAt(seat, cover, repeats);
    const bandWidth = solveWidth(need, { width: drawnWidth, seat: drawn }, measure);
    const seat = bandWidth === undefined ? drawn : measure(bandWidth);
    const tileWidth = tileAt(seat, cover, repeats);
    candidates.push({
      repeats,
      tileWidth,
      tileHeight: spec.aspect * tileWidth,
      bandWidth,
      stretch: drawn.seatLength / (spec.rows * spec.aspect * tileAt(drawn, cover, repeats)),
    });
  }
  return candidates.sort((a, b) => cost(spec, drawnWidth, a) - cost(spec, drawnWidth, b) || a.repeats - b.repeats);
}

/** How far a candidate is from what was drawn: mm of band width where the tile is held, else the stretch's logarithm. */
function cost(spec: FitSpec, drawnWidth: number, candidate: FitCandidate): number {
  if (spec.hold === "band") return Math.abs(Math.log(candidate.stretch));
  return candidate.bandWidth === undefined ? Number.POSITIVE_INFINITY : Math.abs(candidate.bandWidth - drawnWidth);
}

/** @param nearDrawn lists the candidates near the drawn band, for the error */
function choose(
  spec: FitAsk,
  candidates: readonly FitCandidate[],
  nearDrawn: () => readonly FitCandidate[],
): FitCandidate {
  const [best] = candidates;
  const chosen =
    spec.repeats === "auto" ? best : (candidates.find((one) => one.repeats === spec.repeats) as FitCandidate);
  if (spec.hold === "band" || chosen.bandWidth !== undefined) return chosen;
  const possible = [...candidates, ...(spec.repeats === "auto" ? [] : nearDrawn())]
    .filter((one) => one.bandWidth !== undefined)
    .map((one) => one.repeats);
  const distinct = [...new Set(possible)].sort((a, b) => a - b);
  throw new AnnuletError({
    code: "fit-impossible",
    message: `no band between ${WIDTH_RANGE[0]} and ${showLength(WIDTH_RANGE[1])} wide makes ${chosen.repeats} tiles of aspect ${spec.aspect} in ${spec.rows} row${spec.rows === 1 ? "" : "s"} meet`,
    path: `${spec.path ?? "pattern"}.fit.repeats`,
    value: spec.repeats,
    allowed: distinct.length > 0 ? `of the numbers near it and near the drawn band: ${distinct.join(", ")}` : undefined,
    hint: 'change the repeats, rows or aspect, or say "hold": "band" so that the tile stretches',
  });
}

/**
 * The band width at which the seat is as long as its rows of tiles need; undefined where there is none.
 *
 * @param need the length that is needed on a seat, mm
 * @param start the drawn band
 */
export function solveWidth(
  need: (seat: SeatMeasure) => number,
  start: { readonly width: number; readonly seat: SeatMeasure },
  measure: MeasureSeat,
): number | undefined {
  const excessOf = (seat: SeatMeasure) => seat.seatLength - need(seat);
  const excess = (width: number) => excessOf(measure(width));
  try {
    const bracket = findBracket(excess, { x: start.width, y: excessOf(start.seat) });
    if (bracket === undefined) return undefined;
    const [low, high] = narrowRoot(excess, ...bracket, WIDTH_STEP);
    const nearest = -low.y < high.y ? low : high;
    return Math.abs(nearest.y) <= JUMP_LIMIT * start.seat.seatLength ? nearest.x : undefined;
  } catch (error) {
    if (error instanceof AnnuletError && !isBeyond(error)) return undefined;
    throw error;
  }
}

/**
 * Largest seat excess at a root, of the drawn seat's length. A root is exact where the seat's length moves smoothly with
 * the width; a freely drawn seat is fitted by arcs, whose length may jump a little where the fit takes one more. A
 * third of the stretch that shows.
 */
const JUMP_LIMIT = STRETCH_LIMIT / 3;

/** First stride away from the drawn width, in its seat excess: seats grow about as fast as their bands. */
const FIRST_STRIDE = 1.1;

/** A seat's excess grows no faster than this with the width, mm a mm: above it, a gap before it cannot hold a root. */
const STEEPEST = 10;

/** Walks from the drawn width, in growing strides, to where the seat's excess has the other sign. */
function findBracket(excess: (width: number) => number, start: Sample): [low: Sample, high: Sample] | undefined {
  const down = start.y >= 0;
  const limit = down ? WIDTH_RANGE[0] : WIDTH_RANGE[1];
  let near = start;
  let stride = FIRST_STRIDE * Math.abs(start.y);
  if (stride === 0) return [start, start];
  /** The nearest width known that cannot be built. */
  let wall: number | undefined;
  while (down ? near.x > limit : near.x < limit) {
    const aim = near.x + (down ? -stride : stride);
    let x = down ? Math.max(aim, limit) : Math.min(aim, limit);
    if (wall !== undefined) {
      const gap = Math.abs(wall - near.x);
      if (gap * STEEPEST < Math.abs(near.y) || gap <= WIDTH_STEP) return undefined;
      x = (wall + near.x) / 2;
    }
    const far = tryExcess(excess, x);
    if (far === undefined) {
      wall = x;
    } else if (far.y >= 0 !== down) {
      return down ? [far, near] : [near, far];
    } else {
      near = far;
      stride *= 2;
    }
  }
  return undefined;
}

/** The excess at a width, undefined where no band can be built so wide. */
function tryExcess(excess: (width: number) => number, x: number): Sample | undefined {
  try {
    return { x, y: excess(x) };
  } catch (error) {
    if (error instanceof AnnuletError && !isBeyond(error)) return undefined;
    throw error;
  }
}
