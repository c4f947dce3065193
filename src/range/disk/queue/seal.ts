/**
 * What ranges and workers send each other is sealed (HMAC, RFC 2104, of SHA-256) by a key that stands in the range's store: who can
 * write to the queue alone can have nothing made, and tell nothing.
 */
import { createHmac, randomBytes, timingSafeEqual } from "node:crypto";
import { AnnuletError } from "../../../base/errors.js";
import { keepFile } from "../store/keep-file.js";
import type { RangeStore } from "../store/range-store.js";

/** Name of the key in the store: a new one for each run, so that what a run before has left on the queue is not made any more. */
const KEY = "queue.key";

/** Bytes of a key, as many as the seal has. */
const BYTES = 32;

/** Sealed text. */
export interface Sealed {
  readonly text: string;
  /** 64 hexadecimal digits. */
  readonly seal: string;
}

/** Puts a new key there, over that of a run before. */
export async function newKey(store: RangeStore): Promise<string> {
  const key = randomBytes(BYTES).toString("hex");
  await keepFile(store, KEY, [new TextEncoder().encode(key)]);
  return key;
}

/** The key of the run that is made in a store; undefined where none is. */
export async function readKey(store: RangeStore): Promise<string | undefined> {
  const bytes = await store.get(KEY);
  return bytes === undefined ? undefined : new TextDecoder().decode(bytes);
}

/** After the run; another's key stays. */
export async function dropKey(store: RangeStore, key: string): Promise<void> {
  if ((await readKey(store)) === key) await store.remove(KEY);
}

/** @throws AnnuletError `queue-taken-over` where another run has begun in the store, or its own is over */
export async function requireKey(store: RangeStore, key: string): Promise<void> {
  if ((await readKey(store)) !== key) throw takenOver();
}

/** @param id of the job, so that the text of one is none for another */
export function seal(text: string, key: string, id: string): Sealed {
  return { text, seal: sealOf(text, key, id) };
}

/** The text; undefined where it was sealed by another key, for another job, or changed. */
export function unseal({ text, seal: told }: Sealed, key: string, id: string): string | undefined {
  const own = Buffer.from(sealOf(text, key, id), "hex");
  const other = Buffer.from(told, "hex");
  return own.length === other.length && timingSafeEqual(own, other) ? text : undefined;
}

function sealOf(text: string, key: string, id: string): string {
  return createHmac("sha256", key).update(`${id}\n${text}`).digest("hex");
}

export function takenOver(): AnnuletError {
  return new AnnuletError({
    code: "queue-taken-over",
    message: "another run has begun in the range's folder, or this one is over",
    hint: "let one run at a time write to a folder",
  });
}
