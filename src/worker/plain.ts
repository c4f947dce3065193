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
 * @throws RangeError where it is nested deeper than 40
 */
export function pack<Value>(answer: Value): Parcel<Value> {
  const buffers: ArrayBuffer[] = [];
  return { value: copy(answer, buffers, 0) as Plain<Value>, buffers };
}

function copy(value: unknown, buffers: ArrayBuffer[], depth: number): unknown {
  if (depth > DEEPEST) throw new RangeError(`an answer is nested deeper than ${DEEPEST}`);
  if (typeof value !== "object" || value === null) return value;
  if (ArrayBuffer.isView(value)) return copyArray(value, buffers);
  if (Array.isArray(value)) return value.map((entry) => copy(entry, buffers, depth + 1));
  const entries = Object.entries(value).filter(([, entry]) => typeof entry !== "function");
  return Object.fromEntries(entries.map(([key, entry]) => [key, copy(entry, buffers, depth + 1)]));
}

function copyArray(array: ArrayBufferView, buffers: ArrayBuffer[]): ArrayBufferView {
  const again = structuredClone(array);
  buffers.push(again.buffer as ArrayBuffer);
  return again;
}
