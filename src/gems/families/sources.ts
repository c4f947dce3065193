/**
 * Where the figures of gems are from, and the short forms in which families write them.
 */
import type { Certainty } from "../../base/certainty.js";
import type { Gem, HeatCare, Told, UltrasonicCare } from "../gem.js";

export const TALK = "talk.jewelry, table of specific gravities";
export const TABLE = "universalium.en-academic.com, Important gemstones";
export const VIEWS = "scienceviews.com, gems";
export const HANDBOOK = "wikisource.org, Handbook of Precious Stones (old)";
export const SOCIETY = "gemsociety.org, densities";
export const PARKVILLE = "parkvillejewelers.com";

const MEMORY = "from memory";

/** Several sources that agree. */
export function agreed<Value>(value: Value, ...sources: readonly string[]): Told<Value> {
  return { value, source: sources.join("; "), certainty: "standard" };
}

/** One credible source, or several that are close. */
export function single<Value>(value: Value, ...sources: readonly string[]): Told<Value> {
  return { value, source: sources.join("; "), certainty: "one credible source" };
}

/** Sources that conflict, told with by how much. */
export function conflicting<Value>(value: Value, conflict: string, ...sources: readonly string[]): Told<Value> {
  return { value, source: `${sources.join("; ")}: ${conflict}`, certainty: "weak" };
}

/** No source at hand. */
export function remembered<Value>(value: Value): Told<Value> {
  return { value, source: MEMORY, certainty: "memory" };
}

/** What the trade does with a gem. No source was found for any of it. */
export interface Care {
  readonly heat: Told<HeatCare>;
  readonly ultrasonic: Told<UltrasonicCare>;
  readonly fracture?: Told<string>;
}

/** Common practice, no source. */
export function practice(heat: HeatCare, ultrasonic: UltrasonicCare, fracture?: string): Care {
  const told = <Value>(value: Value): Told<Value> => ({
    value,
    source: "common practice, no source",
    certainty: "common practice" satisfies Certainty,
  });
  const care = { heat: told(heat), ultrasonic: told(ultrasonic) };
  return fracture === undefined ? care : { ...care, fracture: told(fracture) };
}

/** What hammering breaks. */
export function notFlush(what: string): Required<Pick<Gem, "fracture" | "flush">> {
  const told = <Value>(value: Value): Told<Value> => ({
    value,
    source: "nancylthamilton.com: hard and tough stones only",
    certainty: "one credible source",
  });
  return { fracture: told(`${what}; no stone for flush setting`), flush: told(false) };
}
