/**
 * Writes the reference of the design document to examples/reference/, and its type with comments to src/, from the library
 * as it is built: `npm run reference`.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { referenceSchema } from "../build/design/json-schema.js";
import { referencePages } from "../build/output/reference/pages.js";
import { designInputText } from "./design-input.mjs";
import { errorCodesText } from "./error-codes.mjs";

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
writeFileSync(new URL("../src/design/design-input.ts", import.meta.url), designInputText(referenceSchema()));
const root = new URL("../", import.meta.url);
writeFileSync(new URL("src/base/errors/problem-code.ts", root), errorCodesText(fileURLToPath(root)));
