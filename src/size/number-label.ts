/**
 * Reading and writing sizes that are numbers, with the fractions that jewellers write.
 */

/** Quarters as they are written after a whole number, by count. */
const QUARTERS = ["", "¼", "½", "¾"] as const;

const FRACTION_SIGNS: Readonly<Record<string, number>> = { "¼": 0.25, "½": 0.5, "¾": 0.75 };

const DECIMAL = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
const WITH_SIGN = /^(\d*)\s*([¼½¾])$/;
/** A slash fraction needs a blank or hyphen before it: `71/2` could be 7½ or 35½. */
const WITH_SLASH = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*[/⁄]\s*(\d+)$/;

/**
 * The number a label means, or undefined where it is none.
 * `7½`, `7 1/2`, `7-1/2`, `7.5`, `7,5` and the number 7.5 mean the same. Labels are never negative.
 */
export function readNumberLabel(label: string | number): number | undefined {
  if (typeof label === "number") return Number.isFinite(label) ? label : undefined;
  const text = label.trim();
  if (DECIMAL.test(text)) return Number(text.replace(",", "."));
  const sign = WITH_SIGN.exec(text);
  if (sign) return Number(sign[1]) + FRACTION_SIGNS[sign[2]];
  const slash = WITH_SLASH.exec(text);
  if (slash) {
    const fraction = Number(slash[2]) / Number(slash[3]);
    return fraction < 1 ? Number(slash[1] ?? 0) + fraction : undefined;
  }
  return undefined;
}

/** Writes a multiple of a quarter: 7 → `7`, 7.5 → `7½`, 0.25 → `¼`. */
export function writeQuarters(place: number): string {
  const whole = Math.floor(place);
  const fraction = QUARTERS[Math.round((place - whole) * 4)];
  return whole === 0 && fraction !== "" ? fraction : `${whole}${fraction}`;
}
