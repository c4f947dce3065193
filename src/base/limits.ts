/**
 * Bounds on work, so that a design made to stall, by design or by mistake, ends with a clear error.
 */
import { definedOf } from "./defined-of.js";
import { AnnuletError } from "./errors.js";

/** What one question may cost. */
export interface Limits {
  /** Seconds by the clock, above 0. */
  readonly seconds: number;
  /** Triangles of the ring, 1 or more, counted before they are made. */
  readonly triangles: number;
  /** Corners of all drawn art in all its copies on the strip that is worked, 1 or more, counted before they are made. */
  readonly corners: number;
}

/**
 * Defaults, chosen: no honest design meets them. The richest example has 204 000 triangles and 150 000 corners and takes
 * 5 s of CPU on a shared core (measured).
 */
export const LIMITS: Limits = { seconds: 1800, triangles: 5_000_000, corners: 4_000_000 };

/** Limits with the defaults where nothing is told. */
export function fillLimits(told: Partial<Limits> = {}): Limits {
  const { seconds = LIMITS.seconds, triangles = LIMITS.triangles, corners = LIMITS.corners } = told;
  return { seconds, triangles, corners };
}

/** How a refusal by a limit is told. */
const CODES = { seconds: "too-long", triangles: "too-many-triangles", corners: "too-many-corners" } as const;

/**
 * The error where a limit is met.
 *
 * @param path the part of the document that is worked, or asks for most
 */
export function beyond(
  name: keyof Limits,
  message: string,
  { most, value, path, hint }: { most: number; value?: number; path: string | undefined; hint: string },
): AnnuletError {
  const allowed = `at most ${most} ${name}`;
  return new AnnuletError({ code: CODES[name], message, allowed, hint, ...definedOf({ path, value }) });
}

/** The error where work took longer than it may. */
export function tooLong(seconds: number, path: string | undefined): AnnuletError {
  const hint = "simplify what it names, or raise the limit";
  return beyond("seconds", `the work took longer than ${seconds} s`, { most: seconds, path, hint });
}

/** Whether an error says that a limit was met: with other limits it may go well. */
export function isBeyond(error: unknown): boolean {
  return error instanceof AnnuletError && Object.values<string>(CODES).includes(error.code);
}
