import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tools/longest-first.mjs";
import { SELF_LOADING, selfLoading } from "./tools/self-loading.mjs";

export default defineConfig({
  plugins: [selfLoading()],
  resolve: {
    alias: [
      { find: /^annulet$/, replacement: fileURLToPath(new URL("./src/index.ts", import.meta.url)) },
      { find: /^annulet\/(\w+)$/, replacement: fileURLToPath(new URL("./src/entries/$1.ts", import.meta.url)) },
    ],
  },
  test: {
    include: ["tests/**/*.test.ts"],
    // Both cores of the machines that this is run on; the default leaves one of them idle.
    maxWorkers: 2,
    // Each worker loads the library once and not once a file: three quarters of the time of a small test file.
    isolate: false,
    // As the build changes them: so they can be told where their WebAssembly is.
    server: { deps: { inline: Object.keys(SELF_LOADING) } },
    testTimeout: 300_000,
    hookTimeout: 120_000,
    sequence: { sequencer: LongestFirst },
    // Pages and style sheets are no code that could be covered.
    coverage: {
      provider: "v8",
      include: ["src/**/*.{ts,tsx}"],
      exclude: ["**/*.d.ts"],
      reporter: ["text-summary", "text"],
      thresholds: { lines: 90 },
    },
  },
});
