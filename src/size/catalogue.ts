/**
 * The built-in size systems. A new one is one file and one line here.
 */
import { closest } from "fastest-levenshtein";
import { safeText } from "../base/errors/safe-text.js";
import { AnnuletError } from "../base/errors.js";
import { requireOptions } from "../base/options.js";
import { germanSizes } from "./german.js";
import { indiaSizes } from "./india.js";
import { isoSizes } from "./iso.js";
import { japanSizes } from "./japan.js";
import type { SizeSystem } from "./size-system.js";
import { swissSizes } from "./swiss.js";
import { ukSizes } from "./uk.js";
import { usSizes } from "./us.js";
import { usGaugeSizes } from "./us-gauge.js";

/**
 * Every built-in size system, in the order tables show them.
 *
 * @example
 * const names = sizeSystems.map((system) => system.name); // iso, us, uk …
 */
export const sizeSystems: readonly SizeSystem[] = [
  isoSizes,
  usSizes,
  usGaugeSizes,
  ukSizes,
  japanSizes,
  swissSizes,
  germanSizes,
  indiaSizes,
];

/** The systems to choose from. */
export interface SizeSystemOptions {
  /** The systems to choose from; default the built-in ones. */
  readonly systems?: readonly SizeSystem[] | undefined;
}

const SYSTEMS = {
  holds: (value: unknown) => Array.isArray(value) && value.every(isSystem),
  allowed: "a list of size systems, such as sizeSystems and what scaleSystem makes",
};

function isSystem(value: unknown): boolean {
  const { name, circumferenceOf, labelOf } = Object(value) as Partial<SizeSystem>;
  return typeof name === "string" && typeof circumferenceOf === "function" && typeof labelOf === "function";
}

/**
 * The systems to choose from.
 *
 * @throws AnnuletError `option-unknown`, `option-invalid`
 */
export function systemsOf(options: SizeSystemOptions): readonly SizeSystem[] {
  requireOptions(options, { systems: SYSTEMS });
  return options.systems ?? sizeSystems;
}

/**
 * The size system of a name.
 *
 * @throws AnnuletError `size-system-unknown`, naming the nearest, and those of `systemsOf`
 */
export function findSizeSystem(name: string, options: SizeSystemOptions = {}): SizeSystem {
  const systems = systemsOf(options);
  const found = systems.find((system) => system.name === name);
  if (found) return found;
  const names = systems.map((system) => system.name);
  throw new AnnuletError({
    code: "size-system-unknown",
    message: `There is no size system ${safeText(name)}.`,
    path: "size.system",
    value: name,
    allowed: names.join(", "),
    hint: names.length > 0 && typeof name === "string" ? `Did you mean ${closest(name, names)}?` : undefined,
  });
}
