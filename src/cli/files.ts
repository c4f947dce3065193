/**
 * Reads standard input.
 */
import { tooLarge } from "../disk/read-file.js";
import { joinChunks } from "../toolbox/index.js";
import type { Io } from "./io.js";

/** Name that stands for standard input. */
export const STDIN = "-";

/**
 * All of standard input.
 *
 * @throws AnnuletError `file-too-large`
 */
export async function readStdin(io: Io, limit: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let total = 0;
  for await (const chunk of io.stdin) {
    const bytes = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
    total += bytes.length;
    if (total > limit) throw tooLarge("standard input", limit);
    chunks.push(bytes);
  }
  return joinChunks(chunks);
}
