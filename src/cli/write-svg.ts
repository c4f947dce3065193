/**
 * Writes a drawing.
 */
import { type WrittenFile, writeOutputs } from "./output-files.js";
import type { Target } from "./targets.js";

/** Writes SVG to a target whose name has been checked. */
export function writeSvg(target: Target, svg: string): Promise<readonly WrittenFile[]> {
  return writeOutputs([{ target, chunks: () => [new TextEncoder().encode(svg)] }]);
}
