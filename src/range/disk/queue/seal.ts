/**
 * What ranges and workers send each other is sealed (HMAC, RFC 2104, of SHA-256) by a key that stands in the range's store: who can
 * write to the queue alone can have nothing made, and tell nothing.
 */
import { createHmac, randomBytes, timingSafeEqual } from "node:crypto";
import { AnnuletError } from "../../../base/errors.js";
import { keepFile } from "../store/keep-file.js";
import type { RangeStore } from "../store/range-store.js";

/** Name of the file in the store, while a range is made or was broken off. */
const KEY = "queue.key";

/** Bytes of a key, as many as the seal has. */
const BYTES = 32;

/** Sealed text. */
export interface Sealed {
  readonly text: string;
  /** 64 hexadecimal digits. */
  readonly seal: string;
}

/** Of a run in a store. Both are 64 hexadecimal digits. */
export interface RunKey {
  /** Of the place where the range is made, as long as it is not done: others may have a range of the same name. No secret. */
  readonly place: string;
  /** A new one for each run, so that what a run before has left on the queue is not made any more. */
  readonly key: string;
}

/** Puts a new key there, over that of a run before. */
export async function newKey(store: RangeStore): Promise<RunKey> {
  const before = await readKey(store);
  const run = { place: before?.place ?? randomHex(), key: randomHex() };
  await keepFile(store, KEY, [new TextEncoder().encode(`${run.place} ${run.key}`)]);
  return run;
}

function randomHex(): string {
  return randomBytes(BYTES).toString("hex");
}

const FORM = /^([0-9a-f]{64}) ([0-9a-f]{64})$/;

/** The key of the run that is made in a store; undefined where none is. */
export async function readKey(store: RangeStore): Promise<RunKey | undefined> {
  const bytes = await store.get(KEY);
  const [, place, key] = FORM.exec(bytes === undefined ? "" : new TextDecoder().decode(bytes)) ?? [];
  return key === undefined ? undefined : { place, key };
}

/** After the run; another's key stays. */
export async function dropKey(store: RangeStore, key: string): Promise<void> {
  if ((await readKey(store))?.key === key) await store.remove(KEY);
}

/** @throws AnnuletError `queue-taken-over` where another run has begun in the store, or its own is over */
export async function requireKey(store: RangeStore, key: string): Promise<void> {
  if ((await readKey(store))?.key !== key) throw takenOver();
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
