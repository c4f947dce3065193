/**
 * Puts beside what rolldown wrote: the WebAssembly files, the default font, and the types that the public ones name.
 */
import { chmodSync, cpSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const ROOT = fileURLToPath(new URL("../", import.meta.url));
const TYPES = join(ROOT, "build/types");

/** From node_modules to dist. The font lies as its package has it: `package:` names find it there. */
const COPIES = {
  "manifold-3d/manifold.wasm": "wasm/manifold.wasm",
  "harfbuzzjs/dist/harfbuzz.wasm": "wasm/harfbuzz.wasm",
  "@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf":
    "fonts/@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf",
};

for (const [from, to] of Object.entries(COPIES)) copy(join(ROOT, "node_modules", from), join(ROOT, "dist", to));
for (const file of namedBy(["index.d.ts", ...entries()])) copy(file, join(ROOT, "dist/types", relative(TYPES, file)));
chmodSync(join(ROOT, "dist/bin/main.js"), 0o755);

/** The types of the package's other paths. */
function entries() {
  return readdirSync(join(TYPES, "entries")).map((name) => `entries/${name}`);
}

/** Files of types that these name, and those that they name, and so on. */
function namedBy(names) {
  const found = new Set(names.map((name) => join(TYPES, name)));
  for (const file of found) {
    const { importedFiles } = ts.preProcessFile(readFileSync(file, "utf8"));
    for (const { fileName } of importedFiles) {
      if (fileName.startsWith(".")) found.add(join(dirname(file), fileName.replace(/\.js$/, ".d.ts")));
    }
  }
  return found;
}

function copy(from, to) {
  mkdirSync(dirname(to), { recursive: true });
  cpSync(from, to);
}
