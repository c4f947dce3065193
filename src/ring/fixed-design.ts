/**
 * A design that cannot change any more, with the text of each of its fields.
 */

import { canonicalText } from "../base/canonical.js";
import type { PieceDesign } from "./answers.js";

export class FixedDesign {
  readonly value: PieceDesign;
  readonly #texts = new Map<string, string>();

  constructor(value: PieceDesign) {
    this.value = freeze(value);
  }

  /** By which a field is compared. */
  text(field: keyof PieceDesign): string {
    const known = this.#texts.get(field);
    if (known !== undefined) return known;
    const text = canonicalText(this.value[field]);
    this.#texts.set(field, text);
    return text;
  }
}

function freeze<Value>(value: Value): Value {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) freeze(inner);
  }
  return value;
}
