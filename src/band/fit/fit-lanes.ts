/**
 * The fit of lanes side by side: each lane's repeats come from its share of the drawn seat. Where tiles are held, the band's
 * width is solved for all lanes at once:
 *
 *     Σ rows · aspect · C / N + gaps = seat length,   C = 2πR · cover / 360, R and the seat moving with the width
 */
import { AnnuletError } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import { type Fit, type FitAsk, type LaneFit, type MeasureSeat, solveFit, solveWidth, tileAt } from "./fit.js";

/** A lane that asks for a fit. */
export interface LaneAsk extends FitAsk {
  readonly name: string;
  /** Its share of the seat, against the other lanes'. */
  readonly share: number;
  /** Where it stands in the document. */
  readonly path: string;
}

export interface LanesBand {
  /** Degrees of the band under the pattern. */
  readonly cover: number;
  /** Plain seat between neighbours, mm. */
  readonly gap: number;
  /** Band width in the document, mm. */
  readonly drawnWidth: number;
}

/**
 * Solves the fit of lanes, the lowest first: that of the first, with all of them in `lanes`.
 *
 * @throws AnnuletError as `solveFit`; `gaps-too-wide` where they leave nothing of the seat
 */
export function solveLanes(
  lanes: readonly LaneAsk[],
  { cover, gap, drawnWidth }: LanesBand,
  measure: MeasureSeat,
): Fit {
  const gaps = gap * (lanes.length - 1);
  const whole = lanes.reduce((sum, { share }) => sum + share, 0);
  const drawn = measure(drawnWidth);
  if (gaps >= drawn.seatLength) throw gapsTooWide(gap, drawn.seatLength / (lanes.length - 1));
  const alone = lanes.map((lane) => {
    // A lane takes its share of whatever the gaps leave of the seat.
    const own: MeasureSeat = (width) => {
      const seat = measure(width);
      return { ...seat, seatLength: Math.max(0, seat.seatLength - gaps) * (lane.share / whole) };
    };
    return solveFit({ ...lane, hold: "band" }, cover, drawnWidth, own);
  });
  const held = lanes[0].hold === "tile";
  const need = (i: number, circumference: number) =>
    (lanes[i].rows * lanes[i].aspect * circumference) / alone[i].repeats;
  const width = held
    ? solveWidth(
        (seat) => gaps + lanes.reduce((sum, _, i) => sum + need(i, tileAt(seat, cover, 1)), 0),
        { width: drawnWidth, seat: drawn },
        measure,
      )
    : drawnWidth;
  if (width === undefined) throw impossible(alone);
  const seat = held ? measure(width) : drawn;
  const circumference = tileAt(seat, cover, 1);
  const asked = lanes.map((lane, i) => (held ? need(i, circumference) : lane.share));
  // What is asked for fills the seat but for the solver's last step; the rest is shared out.
  const scale = (seat.seatLength - gaps) / asked.reduce((sum, one) => sum + one, 0);
  let low = -seat.seatLength / 2;
  const fitted = alone.map((fit, i): LaneFit => {
    const height = asked[i] * scale;
    const v = low + height / 2;
    low += height + gap;
    const stretch = held ? 1 : height / need(i, circumference);
    const { lanes: _, ...rest } = fit;
    return {
      ...rest,
      hold: lanes[i].hold,
      bandWidth: width,
      referenceRadius: seat.meanRadius,
      tileWidth: circumference / fit.repeats,
      tileHeight: height / fit.rows,
      stretch,
      aspectError: stretch - 1,
      name: lanes[i].name,
      v,
      height,
    };
  });
  const [{ name: _, v: __, height: ___, ...first }] = fitted;
  return { ...first, lanes: fitted };
}

/** The fits of a pattern's lanes, the lowest first; of one without lanes, its own over the whole seat. `seatLength` in mm. */
export function laneFits(fit: Fit, seatLength: number): readonly LaneFit[] {
  return fit.lanes.length > 0 ? fit.lanes : [{ ...fit, name: "", v: 0, height: seatLength }];
}

function gapsTooWide(gap: number, most: number): AnnuletError {
  return new AnnuletError({
    code: "gaps-too-wide",
    message: "the gaps between the lanes leave nothing of the seat",
    path: "pattern.gap",
    value: gap,
    allowed: `under ${showLength(most)}`,
    hint: "make the gaps narrower, or the band wider",
  });
}

function impossible(fits: readonly Fit[]): AnnuletError {
  return new AnnuletError({
    code: "fit-impossible",
    message: `no band makes lanes of ${fits.map(({ repeats }) => repeats).join(", ")} true tiles fill its seat`,
    path: "pattern.lanes",
    hint: 'change the repeats, rows or aspects, or say "hold": "band" in the pattern\'s fit, so that the tiles stretch',
  });
}
