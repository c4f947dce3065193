/**
 * What is known of a material that a ring is weighed in.
 */
import type { Certainty } from "../../base/certainty.js";

/** A material. Any value of this shape can stand beside the built-in ones. */
export interface Alloy {
  /** Symbol, fineness, and colour or partner: `ag925`, `au750-yellow`, `pt950-ru`. */
  readonly symbol: string;
  /** Name in tables. */
  readonly name: string;
  /** g/cm³. */
  readonly density: number;
  /** Smallest and largest density that is published for its kind, g/cm³. */
  readonly range?: readonly [number, number];
  /** Parts of precious metal in a thousand, ‰ (ISO 9202, which knows no 417 and no 935). */
  readonly fineness?: number;
  /** The metal it is hallmarked as; `pattern` is what burns out or is cast from, `other` a user's own. */
  readonly kind: "gold" | "silver" | "platinum" | "palladium" | "copper alloy" | "pattern" | "other";
  /** Where the density comes from. */
  readonly source: string;
  readonly certainty: Certainty;
}
