/**
 * The designs of examples/, with the files beside them that they name.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { filesBeside } from "../src/cli/design-folder.js";
import type { TimedDesign } from "./designs.js";

/** Found by the package's own name, so that it does not matter where this file was compiled to. */
const FOLDER = fileURLToPath(new URL("examples/", import.meta.resolve("annulet/package.json")));

export interface ExampleDesign extends TimedDesign {
  readonly files: (name: string) => Uint8Array;
}

/** @param part of the file's name; the empty string for all of them */
export function exampleDesigns(part: string): ExampleDesign[] {
  const names = readdirSync(FOLDER).filter((name) => /^[a-z]+-[a-z-]+\.json$/.test(name) && name.includes(part));
  return names.map((name) => {
    const path = join(FOLDER, name);
    return { name: name.replace(".json", ""), document: readFileSync(path, "utf8"), files: filesBeside(path) };
  });
}
