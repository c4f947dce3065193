/**
 * Keeps the last result of a function: one span is asked for by several, one after the other.
 */

import type { Pausing } from "../base/pausing.js";

/** The function, which works a key out again only where another was asked for since. */
export function remember<Key, Result>(make: (key?: Key) => Result): (key?: Key) => Result {
  let last: { readonly key: Key | undefined; readonly result: Result } | undefined;
  return (key) => {
    if (last === undefined || last.key !== key) last = { key, result: make(key) };
    return last.result;
  };
}

/** The same of work in pieces. */
export function rememberMaking<Key, Result>(make: (key?: Key) => Pausing<Result>): (key?: Key) => Pausing<Result> {
  let last: { readonly key: Key | undefined; readonly result: Result } | undefined;
  return function* (key) {
    if (last !== undefined && last.key === key) return last.result;
    const result = yield* make(key);
    last = { key, result };
    return result;
  };
}
