/**
 * Records of variants in the range's folder, one file each, by the variant's name.
 */
import { mkdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { outputError } from "../../disk/output-errors.js";
import { writeWhole } from "../../disk/write-whole.js";
import { RECORD_VERSION, type VariantRecord } from "../records/record.js";

/** Where the files of variants stand, and their records, in the range's folder. */
export const RINGS = "rings";
export const RECORDS = "records";

/** Makes the folders. @throws AnnuletError `output-not-writable` */
export function makeFolders(folder: string): void {
  try {
    for (const inner of [RINGS, RECORDS]) mkdirSync(join(folder, inner), { recursive: true });
  } catch (cause) {
    throw outputError("output-not-writable", folder, `Cannot write to the folder ${folder}`, cause);
  }
}

/** The record of a name; undefined where there is none that can be read. */
export function readRecord(folder: string, name: string): VariantRecord | undefined {
  try {
    const record: unknown = JSON.parse(readFileSync(pathOf(folder, name), "utf8"));
    return isRecord(record, name) ? record : undefined;
  } catch {
    // None, or one that somebody has broken: the variant is made again.
    return undefined;
  }
}

/** @throws AnnuletError `output-failed` */
export function writeRecord(folder: string, record: VariantRecord): void {
  const text = `${JSON.stringify(record, null, 1)}\n`;
  writeWhole(pathOf(folder, record.name), [new TextEncoder().encode(text)]);
}

/** Before a variant's files are written anew: until its record stands again, nothing says that they belong together. */
export function dropRecord(folder: string, name: string): void {
  rmSync(pathOf(folder, name), { force: true });
}

/** Whether all files of a record stand there with as many bytes. What is in them `--verify` tells. */
export function filesStand(folder: string, record: VariantRecord): boolean {
  if (record.kind === "left-out") return true;
  return record.files.every(({ path, bytes }) => {
    const stat = statSync(join(folder, path), { throwIfNoEntry: false });
    return stat?.isFile() === true && stat.size === bytes;
  });
}

function pathOf(folder: string, name: string): string {
  return join(folder, RECORDS, `${name}.json`);
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
