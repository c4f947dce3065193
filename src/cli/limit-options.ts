/**
 * The options by which a command bounds its work.
 */
import type { Limits } from "../index.js";
import { BUILD_DEFAULTS } from "../toolbox/index.js";
import type { OptionSpec } from "./command.js";

export interface LimitOptions {
  readonly maxSeconds?: number;
  readonly maxTriangles?: number;
  readonly maxCorners?: number;
}

const { seconds, triangles, corners } = BUILD_DEFAULTS.limits;

export const MAX_SECONDS: OptionSpec = {
  flags: "--max-seconds <count>",
  description: `give up after so long (default: ${seconds})`,
  number: true,
};

const MAX_CORNERS: OptionSpec = {
  flags: "--max-corners <count>",
  description: `refuse art that comes to more in all its copies (default: ${corners})`,
  number: true,
};

/** Of commands that draw the pattern and build nothing. */
export const FLAT_LIMIT_OPTIONS: readonly OptionSpec[] = [MAX_SECONDS, MAX_CORNERS];

export const LIMIT_OPTIONS: readonly OptionSpec[] = [
  MAX_SECONDS,
  {
    flags: "--max-triangles <count>",
    description: `refuse rings that come to more, before they are made (default: ${triangles})`,
    number: true,
  },
  MAX_CORNERS,
];

/** What was asked for; the rest at its default. */
export function limitsOf({ maxSeconds, maxTriangles, maxCorners }: LimitOptions): Partial<Limits> {
  const asked = Object.entries({ seconds: maxSeconds, triangles: maxTriangles, corners: maxCorners });
  return Object.fromEntries(asked.filter(([, value]) => value !== undefined));
}
