/**
 * The page of one ring, without the ring: `annulet make … -o ring.html` puts it in. `npm run workbench` writes it into dist.
 */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { viteSingleFile } from "vite-plugin-singlefile";
import { pagePolicy } from "./tools/page-policy.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here("src/workbench/one-ring"),
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: [viteSingleFile({ removeViteModuleLoader: true }), pagePolicy()],
  build: {
    outDir: here("dist/workbench"),
    emptyOutDir: false,
    target: "es2022",
    rolldownOptions: { input: here("src/workbench/one-ring/one-ring.html") },
  },
});
