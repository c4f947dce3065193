/**
 * Writes a drawing and tells of it.
 */
import { showBytes } from "./files.js";
import { type Io, print } from "./io.js";
import { type Target, writeOutputs } from "./output-files.js";

/** Writes SVG to a target whose name has been checked; `output` is that name as it was asked for. */
export async function writeSvg(io: Io, target: Target, output: string, svg: string): Promise<void> {
  const [{ size }] = await writeOutputs([{ target, chunks: () => [new TextEncoder().encode(svg)] }]);
  print(io, `written: ${output} (${showBytes(size)})`);
}
