/**
 * What a request sends along.
 */
import type { IncomingMessage } from "node:http";
import { joinChunks } from "../../toolbox/index.js";

/** All of a request's body; undefined where it is larger than `limit` bytes: the rest is then not read. */
export async function readBody(request: IncomingMessage, limit: number): Promise<Uint8Array | undefined> {
  if (Number(request.headers["content-length"] ?? 0) > limit) return undefined;
  const chunks: Uint8Array[] = [];
  let total = 0;
  for await (const chunk of request.iterator({ destroyOnReturn: false })) {
    total += (chunk as Uint8Array).length;
    if (total > limit) return undefined;
    chunks.push(chunk as Uint8Array);
  }
  return joinChunks(chunks);
}
