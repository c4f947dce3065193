/**
 * The options by which a command bounds its work.
 */
import type { Limits } from "../index.js";
import { BUILD_DEFAULTS } from "../toolbox/index.js";
import type { OptionSpec } from "./command.js";

export interface LimitOptions {
  readonly maxSeconds?: number;
  readonly maxTriangles?: number;
}

const { seconds, triangles } = BUILD_DEFAULTS.limits;

export const LIMIT_OPTIONS: readonly OptionSpec[] = [
  { flags: "--max-seconds <count>", description: `give up after so long (default: ${seconds})`, number: true },
  {
    flags: "--max-triangles <count>",
    description: `refuse rings that come to more, before they are made (default: ${triangles})`,
    number: true,
  },
];

/** What was asked for; the rest at its default. */
export function limitsOf({ maxSeconds, maxTriangles }: LimitOptions): Partial<Limits> {
  const asked = Object.entries({ seconds: maxSeconds, triangles: maxTriangles });
  return Object.fromEntries(asked.filter(([, value]) => value !== undefined));
}
