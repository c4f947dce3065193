/**
 * Proportions as they are typed: a name, or table=0.6,crownAngle=33.
 */
import { AnnuletError } from "../../index.js";
import { PROPORTION_NAMES, type ProportionsSpec } from "../../toolbox/index.js";
import { usage } from "../usage.js";

/** What the shares may be is the library's to say. @throws AnnuletError `usage` */
export function readProportions(text: string | undefined): ProportionsSpec | undefined {
  if (text === undefined) return undefined;
  const name = PROPORTION_NAMES.find((one) => one === text);
  if (name !== undefined) return name;
  const pairs = text.split(",").map((part) => {
    const [, key, value] = /^\s*([a-zA-Z]+)\s*=\s*(-?\d+(?:\.\d+)?)\s*$/.exec(part) ?? [];
    return [key, Number(value)] as const;
  });
  if (pairs.every(([key]) => key !== undefined)) return Object.fromEntries(pairs);
  throw new AnnuletError({
    ...usage("These are no proportions."),
    path: "--proportions",
    value: text,
    allowed: `${PROPORTION_NAMES.join(", ")}, or shares and angles as table=0.6,crownAngle=33`,
  });
}
