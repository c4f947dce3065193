/**
 * The plan of a command line, and the folder in which the files are that it names.
 */
import { dirname } from "node:path";
import { readFile } from "../../disk/read-file.js";
import { readStdin, STDIN } from "../files.js";
import type { Io } from "../io.js";

/** Largest plan, bytes: one that lists a row for each of a shop's rings. */
const MOST_BYTES = 5e6;

export interface PlanFile {
  readonly text: string;
  readonly folder: string;
}

/** @throws AnnuletError as `readFile` */
export async function loadPlan(path: string, io: Io): Promise<PlanFile> {
  const bytes = path === STDIN ? await readStdin(io, MOST_BYTES) : readFile(path, MOST_BYTES);
  return { text: new TextDecoder().decode(bytes), folder: path === STDIN ? "." : dirname(path) };
}
