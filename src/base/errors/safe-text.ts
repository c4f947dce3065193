/**
 * Any value as JSON text, whatever it is: what JSON has no word for is told as text.
 */

/** JSON; never throws. */
export function safeText(value: unknown): string {
  try {
    return JSON.stringify(value, sayInWords) ?? JSON.stringify(String(value));
  } catch {
    // It holds itself, or a getter or a proxy of the caller's threw.
    return JSON.stringify(kindInWords(value));
  }
}

function sayInWords(_key: string, value: unknown): unknown {
  switch (typeof value) {
    case "number":
      return Number.isFinite(value) ? value : String(value);
    case "bigint":
    case "symbol":
      return String(value);
    case "function":
      return "a function";
    default:
      // Of bytes nobody wants to read each.
      return ArrayBuffer.isView(value) ? `${kindInWords(value)} of ${value.byteLength} bytes` : value;
  }
}

/** `[object Map]` for a map. */
function kindInWords(value: unknown): string {
  try {
    return Object.prototype.toString.call(value);
  } catch {
    return "a value that cannot be read";
  }
}
