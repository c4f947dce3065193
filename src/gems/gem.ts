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

/** Whether a gem bears being cast in place, in the wax: `cast` bears burnout and metal, `after` is set into the cast metal. */
export type HeatCare = "cast" | "after";

/** Whether a gem bears an ultrasonic bath: `caution` not where it is included, treated or filled. */
export type UltrasonicCare = "yes" | "caution" | "no";

/** A material of stones. Any value of this shape can stand beside the built-in ones. */
export interface Gem {
  /** Symbol in documents: `diamond`, `almandine`. */
  readonly symbol: string;
  /** Name in tables. */
  readonly name: string;
  /** Density, g/cm³ (specific gravity). */
  readonly density: Told<number>;
  /** Smallest and largest density that is published, g/cm³, where sources differ. */
  readonly densityRange?: readonly [number, number];
  /** Hardness on Mohs' scale, least and most; undefined where a user does not say. */
  readonly hardness?: Told<readonly [number, number]>;
  readonly heat: Told<HeatCare>;
  readonly ultrasonic: Told<UltrasonicCare>;
  /** What breaks it, in a few words; undefined where the trade says nothing. */
  readonly fracture?: Told<string>;
  /** False where it does not bear metal being rubbed over it; undefined where the trade says nothing. */
  readonly flush?: Told<boolean>;
}
