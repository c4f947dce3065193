/**
 * For Vite: `import { demoDesigns } from "demo:designs"` gives the examples' designs with the files that they name.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const NAME = "demo:designs";

const EXAMPLES = fileURLToPath(new URL("../examples/", import.meta.url));

/** The README's, which stands first. */
const FIRST = "saltmarsh-lattice";

export function demoDesigns() {
  return {
    name: "demo-designs",
    resolveId: (id) => (id === NAME ? `\0${NAME}` : null),
    load: (id) => (id === `\0${NAME}` ? `export const demoDesigns = ${JSON.stringify(readAll())};` : null),
  };
}

function readAll() {
  const files = readdirSync(EXAMPLES).filter((name) => /^[a-z]+-[a-z-]+\.json$/.test(name));
  const designs = files.map((name) => readDesign(name.replace(/\.json$/, "")));
  return designs.sort((a, b) => Number(b.file === FIRST) - Number(a.file === FIRST));
}

function readDesign(file) {
  const text = readFileSync(join(EXAMPLES, `${file}.json`), "utf8");
  const beside = readdirSync(EXAMPLES).filter((name) => /\.(svg|png)$/.test(name));
  const named = beside.filter((name) => text.includes(JSON.stringify(name)) && existsSync(join(EXAMPLES, name)));
  const pack = (name) => gzipSync(readFileSync(join(EXAMPLES, name)), { level: 9 }).toString("base64");
  return { file, text, packed: Object.fromEntries(named.map((name) => [name, pack(name)])) };
}
