/**
 * The bench sheet of a design: built, laid flat, drawn and photographed.
 */
import type { BuildOptions } from "./build.js";
import { openRing, RING_DEFAULTS, type SheetQuestion } from "./open-ring.js";
import { readQuestion } from "./options/questions.js";
import type { BenchSheet } from "./steps/put-sheet.js";

export interface BenchSheetOptions extends Omit<BuildOptions, "piece" | "geometry" | "print">, SheetQuestion {}

export const BENCH_SHEET_DEFAULTS = { tool: RING_DEFAULTS.tool, pictureWidth: RING_DEFAULTS.pictureWidth } as const;

/**
 * Makes the sheet of the finished ring.
 *
 * @param document the design document: an object, or JSON text; its digest is that of the text
 * @throws AnnuletError as `build`
 *
 * @example
 * const sheet = await benchSheet(document, { pictureWidth: 0 });
 * console.log(Object.keys(sheet));
 */
export async function benchSheet(document: unknown, options: BenchSheetOptions = {}): Promise<BenchSheet> {
  const { files, kernel, wasm, maxBeads, decimate, limits, ...asking } = readQuestion("benchSheet", options);
  return openRing(document, { files, kernel, wasm, maxBeads, decimate, limits }).sheet(asking);
}
