/** The designs of examples/, parsed, by file name. */
import { readdirSync, readFileSync } from "node:fs";

const FOLDER = new URL("../../examples/", import.meta.url);

export function exampleDocuments(): Record<string, Record<string, unknown>> {
  const names = readdirSync(FOLDER).filter((name) => /^[a-z]+-[a-z-]+\.json$/.test(name));
  return Object.fromEntries(names.map((name) => [name, JSON.parse(readFileSync(new URL(name, FOLDER), "utf8"))]));
}
