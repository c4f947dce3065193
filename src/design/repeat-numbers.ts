/**
 * Which numbers of repeats a pattern can have: whole cycles where it goes all the way round, and room for its medallion.
 */
import { AnnuletError } from "../base/errors.js";
import type { CycleSpec } from "./cycle.js";

/** Degrees of a pattern that goes all the way round. */
export const FULL_COVER = 360;

/** What decides on the numbers. */
export interface RepeatsAsk {
  readonly repeats: number | "auto";
  /** Default 1. */
  readonly cycle?: CycleSpec;
  /** Tiles whose place a medallion takes. Default 0. */
  readonly medallion?: number;
  /** Where what is fitted stands in the document. Default pattern. */
  readonly path?: string;
}

export interface RepeatNumbers {
  /** Whether so many may go round. */
  readonly allows: (repeats: number) => boolean;
  /** The allowed number nearest to `middle` and up to so many on each side of it, rising. */
  readonly around: (middle: number, reach: number) => readonly number[];
}

/** The numbers for a pattern that covers so many degrees. */
export function repeatNumbers({ cycle = 1, medallion = 0 }: RepeatsAsk, cover: number): RepeatNumbers {
  const round = cover === FULL_COVER;
  const step = medallion > 0 ? (round ? 1 : 2) : round && cycle !== "round" ? cycle : 1;
  const first = medallion > 0 ? medallion + step : step;
  const allows = (repeats: number) => repeats >= first && (repeats - first) % step === 0;
  const around = (middle: number, reach: number) => {
    const nearest = Math.max(0, Math.round((middle - first) / step));
    const from = Math.max(0, nearest - reach);
    return Array.from({ length: nearest + reach - from + 1 }, (_, i) => first + (from + i) * step);
  };
  return { allows, around };
}

/**
 * Checks the number that a document asks for.
 *
 * @throws AnnuletError `cycle-misfit`, `medallion-misfit`
 */
export function requireNumber(ask: RepeatsAsk, cover: number): void {
  const { repeats, medallion = 0, cycle } = ask;
  const { allows, around } = repeatNumbers(ask, cover);
  if (repeats === "auto" || allows(repeats)) return;
  const near = around(repeats, 1).filter((number) => Math.abs(number - repeats) <= (medallion > 0 ? 2 : Number(cycle)));
  const rest = {
    path: `${ask.path ?? "pattern"}.fit.repeats`,
    value: repeats,
    allowed: (near.length > 0 ? near : around(repeats, 0)).join(" or "),
  };
  if (medallion === 0) {
    throw new AnnuletError({
      code: "cycle-misfit",
      message: `${repeats} tiles are no whole number of cycles of ${cycle}, so the last would not meet the first`,
      ...rest,
      hint: "change the repeats or the cycle",
    });
  }
  const full = cover === FULL_COVER;
  throw new AnnuletError({
    code: "medallion-misfit",
    message:
      repeats <= medallion
        ? `a medallion of ${medallion} tiles leaves nothing of ${repeats}`
        : `a medallion of ${medallion} tiles is not in the middle of ${repeats}`,
    ...rest,
    hint: full ? "more repeats, or a narrower medallion" : "repeats and the medallion's tiles both odd or both even",
  });
}
