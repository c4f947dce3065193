/**
 * What is known of a material that stones are cut from.
 */
import type { Certainty } from "../base/certainty.js";

/** A value with where it is from. */
export interface Told<Value> {
  readonly value: Value;
  readonly source: string;
  readonly certainty: Certainty;
}

/** What a gem bears, as the trade says it. */
export interface GemCare {
  /** Whether it may be cast in place, in the wax: `cast` bears the burnout, `after` is set into the cast metal alone. */
  readonly heat: "cast" | "after";
  /** Whether it may be cleaned in an ultrasonic bath: `caution` not where it is included, treated or filled. */
  readonly ultrasonic: "yes" | "caution" | "no";
  /** What breaks it, in a few words; undefined where nothing is to be told. */
  readonly fracture?: string;
  readonly source: string;
  readonly certainty: Certainty;
}

/** A material of stones. Any value of this shape can stand beside the built-in ones. */
export interface Gem {
  /** Symbol in documents: `diamond`, `garnet-almandine`. */
  readonly symbol: string;
  /** Name in tables. */
  readonly name: string;
  /** Specific gravity, g/cm³. */
  readonly density: Told<number>;
  /** Hardness on Mohs' scale, least and most. */
  readonly hardness: Told<readonly [number, number]>;
  readonly care: GemCare;
}
