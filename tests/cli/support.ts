/**
 * Runs the program inside the test's process, and makes folders and small designs for it.
 */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable, Writable } from "node:stream";
import { onTestFinished } from "vitest";
import type { Io, TextStream } from "../../src/cli/io.js";
import { run } from "../../src/cli/run.js";

/** A plain band, the least that can be made. */
export const PLAIN = {
  annulet: 1,
  name: "plain band",
  size: { system: "iso", value: 54 },
  profile: { width: 4, thickness: 1.6, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 } },
  material: "ag925",
} as const;

/** A band with square tiles and nothing drawn in them: what fit needs. */
export const TILED = { ...PLAIN, name: "tiled band", pattern: {} } as const;

/** Relief that stands above its rails, which is a failed check. */
export const PROUD = {
  ...PLAIN,
  name: "proud relief",
  tolerance: 0.1,
  profile: {
    width: 7,
    thickness: 2,
    bore: { form: "flat" },
    outside: { form: "channel", rail: 0.9, depth: 0.5, edge: 0 },
  },
  pattern: { regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.9 }] },
} as const;

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly stdin?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** Whether standard output and error count as terminals. */
  readonly isTTY?: boolean;
}

/** One command line, with what it printed. */
export async function annulet(words: readonly string[], { stdin = "", env = {}, isTTY = false }: RunOptions = {}) {
  const stdout = collect(isTTY);
  const stderr = collect(isTTY);
  const code = await run(words, { stdin: Readable.from([Buffer.from(stdin)]), stdout, stderr, env });
  return { code, out: stdout.text(), err: stderr.text() } satisfies Ran;
}

function collect(isTTY: boolean): TextStream & { text(): string } {
  const chunks: string[] = [];
  const stream = new Writable({
    write(chunk, _, done) {
      chunks.push(String(chunk));
      done();
    },
  });
  return Object.assign(stream, { isTTY, columns: 100, text: () => chunks.join("") });
}

/** What a command talks to, where it is called by itself and not through a command line: with what it was told so far. */
export function listen() {
  const heard = { out: "", err: "" };
  const stream = (name: "out" | "err") =>
    new Writable({
      write(chunk, _, done) {
        heard[name] += chunk;
        done();
      },
    });
  const io: Io = { stdin: Readable.from([]), stdout: stream("out"), stderr: stream("err"), env: {} };
  return { io, heard };
}

/** A folder of its own for the running test, taken away after it. */
export function tempFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "annulet-cli-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Writes a design, or any text, into a folder; returns its path. */
export function put(folder: string, name: string, content: object | string): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === "string" ? content : JSON.stringify(content));
  return path;
}

/** Names in a folder, hidden ones too. */
export function namesIn(folder: string): string[] {
  return readdirSync(folder).sort();
}
