/**
 * A function of one value that remembers what it gave.
 */

/**
 * @param most results that are kept; with one more all are let go, so that memory stays bounded
 * @param make gives the same for the same key
 */
export function remembered<Key, Result>(most: number, make: (key: Key) => Result): (key: Key) => Result {
  const known = new Map<Key, Result>();
  return (key) => {
    const there = known.get(key);
    if (there !== undefined) return there;
    if (known.size >= most) known.clear();
    const made = make(key);
    known.set(key, made);
    return made;
  };
}
