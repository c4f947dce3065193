/**
 * What bead runs came to, and what is to be said against them.
 */

import type { BandSurface } from "../band/surface/surface.js";
import type { Warn } from "../base/errors.js";
import type { Bead } from "./bead.js";
import type { LegSpacing, LineChoice, PlacedRun } from "./bead-run.js";
import { OVERLAP_LIMIT } from "./bead-set.js";

/** What a bead run came to. */
export interface BeadRunReport {
  /** The region's name, or what the run follows. */
  readonly run: string;
  /** Where it stands in the document. */
  readonly path: string;
  /** Beads on the ring, those met from another run not counted again. */
  readonly count: number;
  /** mm; of a graduated or alternating run the first. */
  readonly diameter: number;
  /** Smallest and largest diameter that the run may have, mm. */
  readonly diameterMin: number;
  readonly diameterMax: number;
  /** Mean arc length between neighbours in space, mm, and its least and largest over the run's legs. */
  readonly spacing: number;
  readonly spacingMin: number;
  readonly spacingMax: number;
  /** Spacing over the local diameter: mean, least and largest over the run's legs. */
  readonly ratio: number;
  readonly ratioMin: number;
  readonly ratioMax: number;
  /** With a step fewer beads in each leg, as made, and with a step more; those that cannot be are left out. */
  readonly choices: readonly BeadChoice[];
  /** Whether the beads stand on the rails or in a step rather than on the relief. */
  readonly onRail: boolean;
  /** θ of its first and last bead, degrees, of a run that stops with the pattern; undefined of others. */
  readonly span?: readonly [from: number, to: number] | undefined;
}

/** One number of beads that a run could have. */
export interface BeadChoice {
  /** Beads on the ring, those met from another run not counted again. */
  readonly count: number;
  /** Mean arc length between neighbours, mm. */
  readonly spacing: number;
  /** Spacing over the local diameter: mean, least and largest over the run's legs. */
  readonly ratio: number;
  readonly ratioMin: number;
  readonly ratioMax: number;
  /** Whether it is the one that is made. */
  readonly made: boolean;
}

/** One line of a run with its beads, and how often it comes round the band. */
export interface PlacedLine {
  readonly placed: PlacedRun;
  readonly copies: number;
}

/** Gap over diameter above which a run looks broken: 25 % of a diameter. */
const GAP_LIMIT = 0.25;

/**
 * The report of a run.
 *
 * @param merged how many of its beads were met from another run or line
 */
export function reportRun(
  what: Pick<BeadRunReport, "run" | "path" | "onRail" | "span" | "diameter" | "diameterMin" | "diameterMax">,
  lines: readonly PlacedLine[],
  merged: number,
): BeadRunReport {
  const placed = lines.reduce((sum, line) => sum + line.copies * line.placed.beads.length, 0);
  const made = lines.map(({ placed: { beads, legs }, copies }) => ({ count: beads.length, legs, copies }));
  const spacings = made.flatMap(({ legs }) => legs.map(({ spacing }) => spacing));
  const { spacing, ...ratios } = summarise(made.flatMap(({ legs }) => legs));
  const other = (pick: (run: PlacedRun) => LineChoice | undefined): BeadChoice[] => {
    const choices = lines.flatMap(({ placed: run, copies }) => {
      const choice = pick(run);
      return choice === undefined ? [] : [{ ...choice, copies }];
    });
    if (choices.length < lines.length || choices.length === 0) return [];
    const all = choices.reduce((sum, { count, copies }) => sum + copies * count, 0);
    // A run that another one holds whole would have beads of its own again.
    const count = all - (merged < Math.min(all, placed) ? merged : 0);
    return [{ count, ...summarise(choices.flatMap(({ legs }) => legs)), made: false }];
  };
  const count = placed - merged;
  return {
    run: what.run,
    path: what.path,
    count,
    diameter: what.diameter,
    diameterMin: what.diameterMin,
    diameterMax: what.diameterMax,
    spacing,
    spacingMin: Math.min(spacing, ...spacings),
    spacingMax: Math.max(spacing, ...spacings),
    ...ratios,
    choices:
      spacings.length === 0
        ? []
        : [...other(({ fewer }) => fewer), { count, spacing, ...ratios, made: true }, ...other(({ more }) => more)],
    onRail: what.onRail,
    ...(what.span === undefined ? {} : { span: what.span }),
  };
}

function summarise(legs: readonly LegSpacing[]): Pick<BeadChoice, "spacing" | "ratio" | "ratioMin" | "ratioMax"> {
  const mean = (of: (leg: LegSpacing) => number) =>
    legs.reduce((sum, leg) => sum + of(leg), 0) / Math.max(1, legs.length);
  const ratio = mean((leg) => leg.ratio);
  const ratios = legs.map((leg) => leg.ratio);
  return {
    spacing: mean(({ spacing }) => spacing),
    ratio,
    ratioMin: Math.min(ratio, ...ratios),
    ratioMax: Math.max(ratio, ...ratios),
  };
}

/** Warns where neighbours overlap or gap too much for their local diameters. */
export function warnSpacing({ run, path, spacing, ratioMin, ratioMax }: BeadRunReport, warn: Warn): void {
  if (spacing === 0) return;
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  if (ratioMin < 1 - OVERLAP_LIMIT) {
    warn({
      code: "beads-overlap",
      message: `beads of the run "${run}" overlap by ${percent(1 - ratioMin)} of their diameter`,
      path,
      value: Number(ratioMin.toFixed(3)),
      allowed: `a ratio of at least ${1 - OVERLAP_LIMIT}`,
      hint: "fewer or smaller beads, or a larger pitch",
    });
  }
  if (ratioMax > 1 + GAP_LIMIT) {
    warn({
      code: "beads-gap",
      message: `beads of the run "${run}" leave gaps of ${percent(ratioMax - 1)} of their diameter`,
      path,
      value: Number(ratioMax.toFixed(3)),
      allowed: `a ratio of at most ${1 + GAP_LIMIT}`,
      hint: "more or larger beads, or a smaller pitch",
    });
  }
}

/** Warns where beads of different runs crowd each other. */
export function warnCrowded(crowded: readonly Bead[], wrap: BandSurface, warn: Warn): void {
  if (crowded.length === 0) return;
  warn({
    code: "beads-crowded",
    message: `${crowded.length} bead${crowded.length === 1 ? "" : "s"} overlap beads of another run by more than ${Math.round(100 * OVERLAP_LIMIT)} %, the first near ${placeOf(crowded[0], wrap)}`,
    path: "beads",
    value: crowded.length,
    hint: 'let runs meet end to end, where one bead serves both; say "junctions": "share" in both; or keep them apart',
  });
}

/** Warns where the beads on either side of a stop crowd each other over a sharp corner. */
export function warnPinched(
  { run, path }: Pick<BeadRunReport, "run" | "path">,
  pinched: readonly Bead[],
  wrap: BandSurface,
  warn: Warn,
): void {
  if (pinched.length === 0) return;
  warn({
    code: "beads-pinched",
    message: `the run "${run}" turns so sharply that the beads beside its corner overlap by more than ${Math.round(100 * OVERLAP_LIMIT)} %, first near ${placeOf(pinched[0], wrap)}`,
    path,
    value: pinched.length,
    hint: 'say "corners": "split", or draw the corner blunter',
  });
}

function placeOf({ centre }: Bead, wrap: BandSurface): string {
  const [u, v] = wrap.inverse(...centre);
  return `u ${u.toFixed(2)}, v ${v.toFixed(2)} mm`;
}
