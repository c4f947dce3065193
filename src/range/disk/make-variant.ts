/**
 * Makes the files of variants, in whatever process: each file whole or not at all, the record last.
 */
import { AnnuletError, type Problem } from "../../base/errors.js";
import type { FileSource } from "../../base/files.js";
import type { Limits } from "../../base/limits.js";
import { VERSION } from "../../base/version.js";
import { digestOf } from "../../design/digest.js";
import type { PlainObject } from "../../design/plain.js";
import { fileSource } from "../../disk/file-source.js";
import { formatForFile } from "../../output/files/catalogue.js";
import { encodePng } from "../../output/picture/png.js";
import { orderCsv } from "../../output/stones/order-csv.js";
import { fileOptionsOf } from "../../ring/made-file.js";
import { type Made, openRing, type Ring } from "../../ring/open-ring.js";
import { OUTPUTS, type OutputName } from "../plan/plan-schema.js";
import { figuresOf } from "../records/figures-of.js";
import { type MadeRecord, RECORD_VERSION, type RecordedFile } from "../records/record.js";
import { type FileDigests, type Making, makingKey } from "../records/variant-keys.js";
import { type CarriedFiles, carriedFiles } from "./queue/carried-files.js";
import { requireKey } from "./queue/seal.js";
import { dropRecord, filesStand, RINGS, readRecord, writeRecord } from "./record-store.js";
import { keepFile, sha256Of } from "./store/keep-file.js";
import { openStore } from "./store/open-store.js";
import type { RangeStore, StorePlace } from "./store/range-store.js";

/** Variants that are made one after the other, each from what it shares with the one before: plain data, for any process. */
export interface MakeTask {
  /** The range's. */
  readonly place: StorePlace;
  /** Where the files are that designs name: a folder, or in the range's store. */
  readonly designFiles: { readonly folder: string } | CarriedFiles;
  readonly making: Making;
  /** What each variant may cost; seconds by the clock, after which its process is killed. */
  readonly limits: VariantLimits;
  /** The key of its run, which has to stand in the store for anything to be written. Default none. */
  readonly run?: string | undefined;
  readonly variants: readonly TaskVariant[];
}

export type VariantLimits = Partial<Limits> & Pick<Limits, "seconds">;

export interface TaskVariant {
  readonly number: number;
  readonly name: string;
  readonly source: string;
  readonly document: PlainObject;
  readonly files: FileDigests;
}

/** What became of a variant. */
export type MakeAnswer =
  | { readonly number: number; readonly kind: "made" | "kept"; readonly record: MadeRecord }
  | { readonly number: number; readonly kind: "failed"; readonly problems: readonly Problem[] };

/** Answers of a task, and what the process holds by then. */
export interface MakeAnswers {
  readonly answers: readonly MakeAnswer[];
  /** Resident memory, bytes. */
  readonly memory: number;
}

export async function makeVariants(task: MakeTask): Promise<MakeAnswers> {
  const answers: MakeAnswer[] = [];
  let ring: Ring | undefined;
  const store = await openStore(task.place);
  const { designFiles: from, limits, making, run } = task;
  const setup = { files: "folder" in from ? fileSource(from.folder) : carriedFiles(store, from), limits };
  for (const variant of task.variants) {
    const { number } = variant;
    try {
      const own: Ring = ring?.change(variant.document) ?? openRing(variant.document, setup);
      ring = own;
      answers.push({ number, ...(await makeOne(own, variant, { store, making, run })) });
    } catch (error) {
      answers.push({ number, kind: "failed", problems: AnnuletError.from(error).problems });
    }
  }
  return { answers, memory: process.memoryUsage.rss() };
}

async function makeOne(
  ring: Ring,
  variant: TaskVariant,
  { store, making, run }: Pick<MakeTask, "making" | "run"> & { readonly store: RangeStore },
) {
  const { name, source } = variant;
  const design = digestOf(await ring.design());
  const key = makingKey(design, variant.files, making);
  const before = await readRecord(store, name);
  if (before?.kind === "made" && before.key === key && (await filesStand(store, before))) {
    const record = { ...before, source };
    if (before.source !== source) await writeRecord(store, record);
    return { kind: "kept", record } as const;
  }
  const made = await ring.make({ piece: making.piece });
  const contents = await contentsOf(ring, made, making);
  if (run !== undefined) await requireKey(store, run);
  await dropRecord(store, name);
  const files: RecordedFile[] = [];
  for (const { output, chunks } of contents) {
    const path = `${RINGS}/${name}${OUTPUTS[output]}`;
    files.push(await keepFile(store, path, chunks(files)));
  }
  const record: MadeRecord = {
    record: RECORD_VERSION,
    kind: "made",
    name,
    source,
    key,
    design,
    files: files.sort((a, b) => (a.path < b.path ? -1 : 1)),
    figures: figuresOf(made.report),
  };
  await writeRecord(store, record);
  return { kind: "made", record } as const;
}

interface Content {
  readonly output: OutputName;
  /** @param before the files that are written already, meshes first */
  readonly chunks: (before: readonly RecordedFile[]) => Iterable<Uint8Array>;
}

/** Height of a picture over its width. */
const PICTURE_SHAPE = 3 / 4;

const MESHES = ["stl", "obj", "3mf", "glb"] as const satisfies readonly OutputName[];

/** What needs to be waited for is made before anything is written. */
async function contentsOf(ring: Ring, made: Made, { outputs, pictureWidth: width }: Making): Promise<Content[]> {
  const contents: Content[] = [];
  for (const output of MESHES.filter((one) => outputs.includes(one))) {
    const format = formatForFile(`ring${OUTPUTS[output]}`);
    const chunks: Uint8Array[] = [];
    // Formats hand out one buffer again and again.
    for await (const chunk of format.write(made.mesh, fileOptionsOf(made, format))) chunks.push(chunk.slice());
    contents.push({ output, chunks: () => chunks });
  }
  if (outputs.includes("report")) {
    contents.push({ output: "report", chunks: (before) => [textBytes(reportText(made, before))] });
  }
  if (outputs.includes("stones")) {
    const { orders } = await ring.stones();
    contents.push({ output: "stones", chunks: () => [textBytes(orderCsv(orders))] });
  }
  if (outputs.includes("picture")) {
    const png = encodePng(await ring.picture({ width, height: Math.round(PICTURE_SHAPE * width) }));
    contents.push({ output: "picture", chunks: () => [png] });
  }
  if (outputs.includes("sheet")) {
    const { html } = await ring.sheet({ tool: `annulet ${VERSION}` });
    contents.push({ output: "sheet", chunks: () => [textBytes(html)] });
  }
  return contents;
}

function reportText({ report }: Made, before: readonly RecordedFile[]): string {
  const files = before.map(({ path, sha256 }) => ({ name: path.slice(RINGS.length + 1), sha256 }));
  return `${JSON.stringify({ ...report, ...(files.length === 0 ? {} : { files }) }, null, 2)}\n`;
}

function textBytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** The digest of each file that a design names. */
export async function fileDigests(names: readonly string[], files: FileSource): Promise<FileDigests> {
  const found: [string, string][] = [];
  for (const name of names) found.push([name, await digestOfFile(name, files)]);
  return Object.fromEntries(found);
}

async function digestOfFile(name: string, files: FileSource): Promise<string> {
  try {
    const content = typeof files === "function" ? await files(name) : files[name];
    if (content !== undefined) return sha256Of(content);
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
  }
  // What is wrong with it the variant tells.
  return "missing";
}
