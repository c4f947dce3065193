import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  resolve: { alias: { annulet: fileURLToPath(new URL("./src/index.ts", import.meta.url)) } },
  test: {
    include: ["tests/**/*.test.ts"],
    // Both cores of the machines that this is run on; the default leaves one of them idle.
    maxWorkers: 2,
    // Each worker loads the library once and not once a file: three quarters of the time of a small test file.
    isolate: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    coverage: { provider: "v8", include: ["src/**"], reporter: ["text-summary", "text"], thresholds: { lines: 90 } },
  },
});
