/**
 * Puts beside what rolldown wrote: the WebAssembly files, the default font, and the types that the public ones name.
 */
import { chmodSync, cpSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { referenceSchema } from "../build/design/json-schema.js";
import { commentedType } from "./commented-design.mjs";
import { plainTypes } from "./plain-types.mjs";

const ROOT = fileURLToPath(new URL("../", import.meta.url));
const TYPES = join(ROOT, "build/types");

/** What the schema library infers of the document has no comments of its own. */
const DESIGN = join(TYPES, "design/schema.d.ts");

/** From node_modules to dist. The font lies as its package has it: `package:` names find it there. */
const COPIES = {
  "manifold-3d/manifold.wasm": "wasm/manifold.wasm",
  "harfbuzzjs/dist/harfbuzz.wasm": "wasm/harfbuzz.wasm",
  "@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf":
    "fonts/@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf",
};

for (const [from, to] of Object.entries(COPIES)) copy(join(ROOT, "node_modules", from), join(ROOT, "dist", to));
for (const [file, text] of plainTypes([join(TYPES, "index.d.ts"), ...entries()])) {
  const place = join(ROOT, "dist/types", relative(TYPES, file));
  mkdirSync(dirname(place), { recursive: true });
  writeFileSync(place, file === DESIGN ? commentedType(text, "Design", referenceSchema()) : text);
}
chmodSync(join(ROOT, "dist/bin/main.js"), 0o755);

/** The types of the package's other paths. */
function entries() {
  return readdirSync(join(TYPES, "entries")).map((name) => join(TYPES, "entries", name));
}

function copy(from, to) {
  mkdirSync(dirname(to), { recursive: true });
  cpSync(from, to);
}
