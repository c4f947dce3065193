/**
 * The range of a field as numbers, read of the words in which the schema's reference tells it.
 */

/** Bounds of a number; `above` and `below` are not reached themselves. */
export interface NumberLimits {
  readonly least?: number;
  readonly above?: number;
  readonly most?: number;
  readonly below?: number;
}

const NUMBER = String.raw`-?\d+(?:\.\d+)?(?:e[+-]?\d+)?`;

/** "above 0 to 1000", "0 to below 1", "5 to 60", "0 or more", "above 0", "up to 7", "up to below 7". */
const RANGE = new RegExp(`^(?:(above )?(${NUMBER})(?: or more)?)?(?: ?(?:up )?to (below )?(${NUMBER}))?$`);

/**
 * Reads a range; of several that are joined by semicolons the first of numbers. None where it tells of entries or characters.
 *
 * @param words as `FieldReference.range`
 */
export function readLimits(words: string | undefined): NumberLimits {
  for (const part of (words ?? "").split("; ")) {
    const found = RANGE.exec(part);
    if (found === null || part === "") continue;
    const [, above, from, below, to] = found;
    return {
      ...(from !== undefined && { [above === undefined ? "least" : "above"]: Number(from) }),
      ...(to !== undefined && { [below === undefined ? "most" : "below"]: Number(to) }),
    };
  }
  return {};
}

/** Whether a number keeps its limits. */
export function isWithin(value: number, { least, above, most, below }: NumberLimits): boolean {
  return (
    (least === undefined || value >= least) &&
    (above === undefined || value > above) &&
    (most === undefined || value <= most) &&
    (below === undefined || value < below)
  );
}
