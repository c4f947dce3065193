/**
 * What the program talks to, so that a test can run it without a process of its own.
 */
import { plainJson, plainText } from "./plain-text.js";

/** A place for text: data goes to one, talk to another. */
export interface TextStream extends NodeJS.WritableStream {
  /** Whether somebody is watching. */
  readonly isTTY?: boolean;
}

export interface Io {
  /** What `-` is read from. */
  readonly stdin: AsyncIterable<Uint8Array | string> & {
    /** The number of the open file, where it is one. */
    readonly fd?: number;
  };
  /** Data. */
  readonly stdout: TextStream;
  /** Where an output `-` goes, when all text goes elsewhere. */
  readonly data?: NodeJS.WritableStream;
  /** Errors, warnings and progress. */
  readonly stderr: TextStream;
  /** `NO_COLOR` (set: no colours) and `ANNULET_DEBUG` (1: internal errors show where they come from) are read. */
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** Writes one line of data, without control characters. */
export function print(io: Io, text: string): void {
  io.stdout.write(`${plainText(text)}\n`);
}

/** Writes one line of talk, without control characters. */
export function say(io: Io, text: string): void {
  io.stderr.write(`${plainText(text)}\n`);
}

/** Writes a value as JSON, indented by two spaces. */
export function printJson(io: Io, value: unknown): void {
  print(io, plainJson(value));
}
