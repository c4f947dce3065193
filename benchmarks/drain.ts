/**
 * Takes all chunks of a file, as a writer to a disk would, but keeps none.
 */
import type { Chunks } from "../src/output/files/format.js";

/** Number of bytes. Chunks of a synchronous writer are taken without waiting. */
export function drain(chunks: Chunks): number | Promise<number> {
  if (!(Symbol.iterator in chunks)) return drainLater(chunks);
  let bytes = 0;
  for (const chunk of chunks) bytes += chunk.length;
  return bytes;
}

async function drainLater(chunks: AsyncIterable<Uint8Array>): Promise<number> {
  let bytes = 0;
  for await (const chunk of chunks) bytes += chunk.length;
  return bytes;
}
