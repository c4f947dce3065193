// Loads view.ts through vite (which vitest brings), since Node 20 does not read TypeScript.
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const { module } = await runnerImport(fileURLToPath(new URL("./view.ts", import.meta.url)), {
  configFile: false,
  logLevel: "error",
});
try {
  module.view(process.argv.slice(2));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 2;
}
