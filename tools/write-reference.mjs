/**
 * Writes the reference of the design document to examples/reference/, from the library as it is built: `npm run reference`.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { referenceSchema } from "../build/design/json-schema.js";
import { referencePages } from "../build/output/reference/pages.js";

const examples = new URL("../examples/", import.meta.url);
const folder = new URL("reference/", examples);
const names = readdirSync(examples).filter((name) => /^[a-z]+-[a-z-]+\.json$/.test(name));
const designs = Object.fromEntries(
  names.map((name) => [name, JSON.parse(readFileSync(new URL(name, examples), "utf8"))]),
);

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder);
for (const [name, text] of Object.entries(referencePages({ schema: referenceSchema(), designs }))) {
  writeFileSync(new URL(name, folder), text);
}
