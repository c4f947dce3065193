/**
 * Records of variants in the range's store, one file each, by the variant's name.
 */
import { RECORD_VERSION, type VariantRecord } from "../records/record.js";
import type { RangeStore } from "./store/range-store.js";

/** Where the files of variants stand, and their records. */
export const RINGS = "rings";
export const RECORDS = "records";

/** The record of a name; undefined where there is none that can be read. */
export async function readRecord(store: RangeStore, name: string): Promise<VariantRecord | undefined> {
  const bytes = await store.get(pathOf(name));
  if (bytes === undefined) return undefined;
  try {
    const record: unknown = JSON.parse(new TextDecoder().decode(bytes));
    return isRecord(record, name) ? record : undefined;
  } catch {
    // One that somebody has broken: the variant is made again.
    return undefined;
  }
}

/** @throws AnnuletError `output-failed`, `store-failed` */
export async function writeRecord(store: RangeStore, record: VariantRecord): Promise<void> {
  const text = `${JSON.stringify(record, null, 1)}\n`;
  await store.put(pathOf(record.name), [new TextEncoder().encode(text)]);
}

/** Before a variant's files are written anew: until its record stands again, nothing says that they belong together. */
export async function dropRecord(store: RangeStore, name: string): Promise<void> {
  await store.remove(pathOf(name));
}

/** Whether all files of a record stand there with as many bytes. What is in them `--verify` tells. */
export async function filesStand(store: RangeStore, record: VariantRecord): Promise<boolean> {
  if (record.kind === "left-out") return true;
  for (const { path, bytes } of record.files) if ((await store.has(path)) !== bytes) return false;
  return true;
}

function pathOf(name: string): string {
  return `${RECORDS}/${name}.json`;
}

function isRecord(value: unknown, name: string): value is VariantRecord {
  const { record, kind, name: own, source } = Object(value) as Partial<VariantRecord>;
  return (
    record === RECORD_VERSION &&
    own === name &&
    typeof source === "string" &&
    (kind === "made" ? isMade(value) : kind === "left-out")
  );
}

function isMade(value: unknown): boolean {
  const { files, key, figures } = Object(value) as { files?: unknown; key?: unknown; figures?: unknown };
  return Array.isArray(files) && typeof key === "string" && typeof figures === "object" && figures !== null;
}
