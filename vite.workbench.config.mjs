/**
 * The workbench as one page that holds all that it needs: `npm run workbench` writes it into dist.
 */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { viteSingleFile } from "vite-plugin-singlefile";
import { demoDesigns } from "./tools/demo-designs.mjs";
import { packed } from "./tools/packed.mjs";
import { pagePolicy } from "./tools/page-policy.mjs";
import { selfLoading } from "./tools/self-loading.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here("src/workbench"),
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: [packed(), demoDesigns(), selfLoading(), viteSingleFile({ removeViteModuleLoader: true }), pagePolicy()],
  worker: { format: "iife", plugins: () => [packed(), selfLoading()], rolldownOptions: { output: { codeSplitting: false } } },
  build: {
    outDir: here("dist/workbench"),
    emptyOutDir: true,
    target: "es2022",
    rolldownOptions: { input: here("src/workbench/workbench.html") },
  },
});
