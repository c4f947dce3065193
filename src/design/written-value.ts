/**
 * Values of a document as people write them where JSON would be a burden: on a command line, in a cell of a table.
 */
import type { SizeSpec } from "../size/size.js";
import type { Plain } from "./plain.js";

const MEASURES = ["diameter", "circumference"] as const;

/** JSON, or else the text itself. */
export function readWritten(text: string): Plain {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/**
 * A size written as `uk:P`, `iso:54` or `diameter:17.3`; undefined where it has not this form. Whether there is such a label, the
 * design's reader tells.
 */
export function readWrittenSize(text: string): SizeSpec | undefined {
  const found = /^\s*([\w-]+)\s*:\s*(\S.*?)\s*$/.exec(text);
  if (found === null) return undefined;
  const [, word, label] = found;
  const system = word.toLowerCase();
  const measure = MEASURES.find((name) => name === system);
  if (measure === undefined) return { system, value: label };
  const mm = Number(label);
  if (!Number.isFinite(mm)) return undefined;
  return measure === "diameter" ? { diameter: mm } : { circumference: mm };
}
