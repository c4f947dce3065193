/**
 * Answers as they are posted from a worker: without functions, and with arrays that are handed over rather than copied twice.
 */

/** What can be posted of a value: the same without its functions. */
export type Plain<Value> = Value extends (...given: never[]) => unknown
  ? never
  : Value extends ArrayBufferView | ArrayBuffer | string | number | boolean | bigint | null | undefined
    ? Value
    : Value extends readonly unknown[]
      ? { readonly [Index in keyof Value]: Plain<Value[Index]> }
      : Value extends object
        ? {
            readonly [Key in keyof Value as Value[Key] extends (...given: never[]) => unknown ? never : Key]: Plain<
              Value[Key]
            >;
          }
        : Value;

/** A copy to post, with the buffers that are handed over. */
export interface Parcel<Value> {
  readonly value: Plain<Value>;
  readonly buffers: readonly ArrayBuffer[];
}

/** Deepest that answers are nested; they are plain and finite. */
const DEEPEST = 40;

/**
 * Copies an answer, so that what a ring remembers stays whole when the copy's arrays are handed over.
 *
 * @param isFresh whether the answer was made for this question alone, so that its own arrays are handed over. Default no
 * @throws RangeError where it is nested deeper than 40
 */
export function pack<Value>(answer: Value, isFresh = false): Parcel<Value> {
  const buffers = new Set<ArrayBuffer>();
  const put = (array: ArrayBufferView): ArrayBufferView => {
    const own = isFresh ? array : structuredClone(array);
    buffers.add(own.buffer as ArrayBuffer);
    return own;
  };
  return { value: copy(answer, put, 0) as Plain<Value>, buffers: [...buffers] };
}

function copy(value: unknown, put: (array: ArrayBufferView) => ArrayBufferView, depth: number): unknown {
  if (depth > DEEPEST) throw new RangeError(`an answer is nested deeper than ${DEEPEST}`);
  if (typeof value !== "object" || value === null) return value;
  if (ArrayBuffer.isView(value)) return put(value);
  if (Array.isArray(value)) return value.map((entry) => copy(entry, put, depth + 1));
  const entries = Object.entries(value).filter(([, entry]) => typeof entry !== "function");
  return Object.fromEntries(entries.map(([key, entry]) => [key, copy(entry, put, depth + 1)]));
}
