/**
 * For Vite: `import bytes from "file?packed"` gives a file's bytes in the page itself, gzip, as base64. A data address would
 * need the page's policy to allow fetching it.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const ENDING = "?packed";

/** Files by the names that the page imports them by, where they are no files of their own. */
const PLACES = {
  "annulet/manifold.wasm": "../node_modules/manifold-3d/manifold.wasm",
  "annulet/harfbuzz.wasm": "../node_modules/harfbuzzjs/dist/harfbuzz.wasm",
  "annulet/default-font.ttf": "../node_modules/@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf",
};

export function packed() {
  return {
    name: "packed",
    enforce: "pre",
    async resolveId(id, importer) {
      if (!id.endsWith(ENDING)) return null;
      const file = id.slice(0, -ENDING.length);
      const own = PLACES[file];
      if (own !== undefined) return `${fileURLToPath(new URL(own, import.meta.url))}${ENDING}`;
      const found = await this.resolve(file, importer, { skipSelf: true });
      return found && `${found.id}${ENDING}`;
    },
    load(id) {
      if (!id.endsWith(ENDING)) return null;
      const bytes = gzipSync(readFileSync(id.slice(0, -ENDING.length)), { level: 9 });
      return `export default ${JSON.stringify(bytes.toString("base64"))};`;
    },
  };
}
