/**
 * Writes a drawing and tells of it.
 */
import { showBytes } from "./files.js";
import { type Io, print } from "./io.js";
import { writeOutputs } from "./output-files.js";
import type { Target } from "./targets.js";

/**
 * Writes SVG to a target whose name has been checked.
 *
 * @param output that name as it was asked for
 * @param tell where it is told; default as data, `say` where other data is printed
 */
export async function writeSvg(io: Io, target: Target, output: string, svg: string, tell = print): Promise<void> {
  const [{ size }] = await writeOutputs([{ target, chunks: () => [new TextEncoder().encode(svg)] }]);
  tell(io, `written: ${output} (${showBytes(size)})`);
}
