/**
 * Fit: how many whole tiles go round, and what gives way so that they do.
 *
 * With C = 2πR · cover / 360 at the reference radius R, N repeats make tiles t = C / N wide, and m rows of aspect a
 * need a seat m·a·t long. R is the seat's mean radius, so that by Pappus' theorem the pattern's area is C times the
 * seat's length exactly. Where the tile is held, the band's width is solved for: R and the seat's length both move with
 * the width, so the root is found by bisection on the real profile.
 */
import { AnnuletError } from "../errors.js";
import { showLength, TURN } from "../units.js";
import type { FitSpec } from "./schema.js";

/** Degrees of a pattern that goes all the way round. */
export const FULL_COVER = 360;

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
  readonly bandWidth: number | undefined;
  /** Stretch of the tile across the band if the band's width is kept: 1 is none. */
  readonly stretch: number;
}

/** The chosen fit. */
export interface Fit {
  readonly repeats: number;
  readonly rows: number;
  /** Degrees of the band under the pattern. */
  readonly cover: number;
  readonly aspect: number;
  readonly hold: "tile" | "band";
  readonly tileWidth: number;
  readonly tileHeight: number;
  readonly bandWidth: number;
  /** Reference radius, mm, at which the tile is true. */
  readonly referenceRadius: number;
  /** Tile height over what its aspect asks for: 1 where the tile is held. */
  readonly stretch: number;
  /** stretch − 1. */
  readonly aspectError: number;
  /** Neighbouring numbers of repeats, best first. */
  readonly candidates: readonly FitCandidate[];
}

/** Stretch above which a tile no longer looks as drawn: 3 %, common practice, no source. */
export const STRETCH_LIMIT = 0.03;

/** Repeats shown on each side of the nearest. */
const CANDIDATE_REACH = 4;

/** Bands are solved for within these widths, mm. */
const WIDTH_RANGE = [0.5, 60] as const;

/** The width is solved to this, mm. */
const WIDTH_STEP = 1e-9;

/**
 * Solves the fit.
 *
 * @param drawnWidth the band width in the document, mm
 * @throws AnnuletError `fit-impossible` where no band of any width gives the repeats asked for
 */
export function solveFit(spec: FitSpec, cover: number, drawnWidth: number, measure: MeasureSeat): Fit {
  const drawn = measure(drawnWidth);
  const candidates = listCandidates(spec, cover, drawnWidth, drawn, measure);
  const chosen = choose(spec, candidates);
  const bandWidth = spec.hold === "tile" ? (chosen.bandWidth as number) : drawnWidth;
  const seat = spec.hold === "tile" ? measure(bandWidth) : drawn;
  const tileWidth = tileAt(seat, cover, chosen.repeats);
  const tileHeight = seat.seatLength / spec.rows;
  const stretch = spec.hold === "tile" ? 1 : tileHeight / (spec.aspect * tileWidth);
  return {
    repeats: chosen.repeats,
    rows: spec.rows,
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
  };
}

/** Tile width, mm, when `repeats` tiles share the covered circumference at the seat's mean radius. */
export function tileAt(seat: SeatMeasure, cover: number, repeats: number): number {
  return (TURN * seat.meanRadius * (cover / FULL_COVER)) / repeats;
}

function listCandidates(
  spec: FitSpec,
  cover: number,
  drawnWidth: number,
  drawn: SeatMeasure,
  measure: MeasureSeat,
): FitCandidate[] {
  const wanted = (spec.rows * spec.aspect * tileAt(drawn, cover, 1)) / drawn.seatLength;
  const middle = spec.repeats === "auto" ? Math.max(1, Math.round(wanted)) : spec.repeats;
  const first = Math.max(1, middle - CANDIDATE_REACH);
  const candidates: FitCandidate[] = [];
  for (let repeats = first; repeats <= middle + CANDIDATE_REACH; repeats++) {
    const bandWidth = solveWidth(spec, cover, repeats, drawnWidth, measure);
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

function choose(spec: FitSpec, candidates: readonly FitCandidate[]): FitCandidate {
  const [best] = candidates;
  const chosen =
    spec.repeats === "auto" ? best : (candidates.find((one) => one.repeats === spec.repeats) as FitCandidate);
  if (spec.hold === "band" || chosen.bandWidth !== undefined) return chosen;
  const possible = candidates.filter((one) => one.bandWidth !== undefined).map((one) => one.repeats);
  throw new AnnuletError({
    code: "fit-impossible",
    message: `no band between ${WIDTH_RANGE[0]} and ${showLength(WIDTH_RANGE[1])} wide makes ${chosen.repeats} tiles of aspect ${spec.aspect} in ${spec.rows} row${spec.rows === 1 ? "" : "s"} meet`,
    path: "pattern.fit.repeats",
    value: spec.repeats,
    allowed:
      possible.length > 0 ? `of the neighbouring numbers: ${possible.sort((a, b) => a - b).join(", ")}` : undefined,
    hint: 'change the repeats, rows or aspect, or say "hold": "band" so that the tile stretches',
  });
}

/** The band width at which the seat is exactly as long as its rows of tiles; undefined where there is none. */
function solveWidth(
  spec: FitSpec,
  cover: number,
  repeats: number,
  drawnWidth: number,
  measure: MeasureSeat,
): number | undefined {
  const excess = (width: number): number | undefined => {
    try {
      const seat = measure(width);
      return seat.seatLength - spec.rows * spec.aspect * tileAt(seat, cover, repeats);
    } catch (error) {
      if (error instanceof AnnuletError) return undefined;
      throw error;
    }
  };
  let [low, high] = bracket(excess, drawnWidth);
  if (!((excess(high) ?? -1) >= 0)) return undefined;
  while (high - low > WIDTH_STEP) {
    const middle = (low + high) / 2;
    const over = excess(middle);
    if (over !== undefined && over >= 0) high = middle;
    else low = middle;
  }
  // A root between widths that can be built is exact; else the narrowest band is already too wide.
  const left = excess(high) as number;
  return Math.abs(left) <= ROOT_REACH ? (low + high) / 2 : undefined;
}

/** Seat excess at a true root, mm: the width's step times the seat's growth with it, with room. */
const ROOT_REACH = 1e-7;

/** Widths on either side of the root, growing out from the drawn one; the upper may fail where there is none. */
function bracket(excess: (width: number) => number | undefined, drawnWidth: number): [number, number] {
  const enough = (width: number) => (excess(width) ?? -1) >= 0;
  const factor = 1.25;
  let [low, high] = [drawnWidth, drawnWidth];
  while (!enough(high) && high < WIDTH_RANGE[1]) {
    low = high;
    high = Math.min(high * factor, WIDTH_RANGE[1]);
  }
  while (enough(low) && low > WIDTH_RANGE[0]) {
    high = low;
    low = Math.max(low / factor, WIDTH_RANGE[0]);
  }
  return [low, high];
}
