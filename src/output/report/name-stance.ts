/**
 * How a ring is turned for the printer, in words.
 */
import type { PrintFigures } from "../print/figures.js";

const NAMES = { built: "as built", lying: "lying", standing: "standing" } as const;

/** `lying`, `as built`, `tilted by 45°`. */
export function nameStance({ stance, tilt }: Pick<PrintFigures, "stance" | "tilt">): string {
  return stance === "tilted" ? `tilted by ${tilt}°` : NAMES[stance];
}
