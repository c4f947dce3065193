/**
 * Numbers as they are typed and shown: decimal comma and point alike.
 */
import { numberIn } from "../words/read-number.js";
import { isWithin, type NumberLimits } from "./limits.js";

/** What was typed: a number, nothing, or something that is refused. */
export type TypedNumber = { readonly value: number } | "nothing" | "no number" | "not whole" | "out of range";

/** What a number has to keep. */
export interface NumberKind {
  readonly whole: boolean;
  readonly limits: NumberLimits;
}

/** Longest text that is looked at, in characters; chosen, far more than any number has. */
const LONGEST = 40;

/** Reads what was typed. Spaces around it, and a unit that the field has, do no harm. */
export function readNumber(text: string, { whole, limits }: NumberKind, unit = ""): TypedNumber {
  const plain = text.trim();
  const bare = unit !== "" && plain.endsWith(unit) ? plain.slice(0, -unit.length).trim() : plain;
  if (bare === "") return "nothing";
  const value = bare.length > LONGEST ? undefined : numberIn(bare);
  if (value === undefined) return "no number";
  if (whole && !Number.isInteger(value)) return "not whole";
  return isWithin(value, limits) ? { value } : "out of range";
}

/** A number as the language writes it, with all of its digits and no marks between thousands. */
export function writeNumber(value: number, language: string): string {
  const text = String(value);
  return language === "de" ? text.replace(".", ",") : text;
}
