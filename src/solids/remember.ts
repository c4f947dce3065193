/**
 * Keeps the last result of a function: one stretch is asked for by several, one after the other.
 */

/** The function, which works a key out again only where another was asked for since. */
export function remember<Key, Result>(make: (key?: Key) => Result): (key?: Key) => Result {
  let last: { readonly key: Key | undefined; readonly result: Result } | undefined;
  return (key) => {
    if (last === undefined || last.key !== key) last = { key, result: make(key) };
    return last.result;
  };
}
