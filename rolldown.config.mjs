/**
 * What ships as JavaScript: the library in few files, its dependencies imported as they are, and the program in few
 * files with most of them inside. Hundreds of files, one a source, take several times as long to load.
 */
import { defineConfig } from "rolldown";

/** Where tsc puts the modules that both are made of. */
const BUILT = "build";

/** Without comments and spaces, which are half of what has to be read at a start; names stay for who reads a stack. */
const DENSE = { compress: false, mangle: false, codegen: { removeWhitespace: true } };

/** What finds files beside itself, and so stays where it is installed. */
const WITH_FILES = ["manifold-3d", "harfbuzzjs"];

export default defineConfig([
  {
    input: { index: `${BUILT}/index.js` },
    external: /^[^./]/,
    output: { dir: "dist", format: "esm", minify: DENSE, chunkFileNames: "chunks/[name]-[hash].js" },
    logLevel: "warn",
  },
  {
    input: { main: `${BUILT}/cli/main.js` },
    external: WITH_FILES,
    platform: "node",
    output: { dir: "dist/bin", format: "esm", minify: DENSE },
    logLevel: "warn",
  },
]);
