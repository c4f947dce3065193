/**
 * Puts files into a store and tells what was put: their bytes and digest, taken while they go by.
 */
import { createHash } from "node:crypto";
import type { RecordedFile } from "../../records/record.js";
import type { RangeStore } from "./range-store.js";

/** @throws AnnuletError `output-failed`, `store-failed` */
export async function keepFile(store: RangeStore, path: string, chunks: Iterable<Uint8Array>): Promise<RecordedFile> {
  const digest = createHash("sha256");
  let bytes = 0;
  function* counted(): Generator<Uint8Array> {
    for (const chunk of chunks) {
      digest.update(chunk);
      bytes += chunk.length;
      yield chunk;
    }
  }
  await store.put(path, counted());
  return { path, bytes, sha256: digest.digest("hex") };
}

/** Puts a text where another stands or none; what has the same bytes is left alone. */
export async function keepText(store: RangeStore, path: string, text: string): Promise<RecordedFile> {
  const bytes = new TextEncoder().encode(text);
  const before = await store.get(path);
  if (before === undefined || !equal(before, bytes)) return keepFile(store, path, [bytes]);
  return { path, bytes: bytes.length, sha256: sha256Of(bytes) };
}

function equal(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}

/** SHA-256 (FIPS 180-4), 64 hexadecimal digits. */
export function sha256Of(bytes: string | Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
