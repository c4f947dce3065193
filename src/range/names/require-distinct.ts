/**
 * Two variants of one name would be one file: refused before anything is made.
 */
import { AnnuletError } from "../../base/errors.js";

/** Variants are named and counted in such portions between two pauses. */
const AT_ONCE = 5000;

/**
 * Yields after every portion of names.
 *
 * @param nameOf of the variant of a number, from 1
 * @throws AnnuletError `names-alike`: most file systems hold `A` and `a` for one name
 */
export function* distinctNames(count: number, nameOf: (number: number) => string): Generator<void, void, void> {
  const seen = new Map<string, number>();
  for (let number = 1; number <= count; number++) {
    const name = nameOf(number);
    const key = name.toLowerCase();
    const other = seen.get(key);
    if (other !== undefined) throw alike(name, other, number);
    seen.set(key, number);
    if (number % AT_ONCE === 0) yield;
  }
}

function alike(name: string, one: number, other: number): AnnuletError {
  return new AnnuletError({
    code: "names-alike",
    message: `variants ${one} and ${other} would both be called ${name}`,
    path: "name",
    value: name,
    hint: "put {n}, or the axis that tells them apart, into the name; or take out the value that comes twice",
  });
}
