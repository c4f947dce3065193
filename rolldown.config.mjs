/**
 * What ships as JavaScript: the library in few files, the program in few files, and the two WebAssembly libraries in one
 * file each. All that annulet is made of lies inside, but three, which programs that show a ring have already.
 * Hundreds of files, one a source, take several times as long to load; packages of its own would bring theirs.
 */
import { bundledPackages } from "./tools/bundled-packages.mjs";
import { SELF_LOADING, selfLoading } from "./tools/self-loading.mjs";

/** Without comments and spaces, which are half of what has to be read at a start; names stay for who reads a stack. */
const DENSE = { compress: false, mangle: false, codegen: { removeWhitespace: true } };

const SHARED = { resolve: { extensionAlias: { ".js": [".ts", ".js"] } }, logLevel: "warn" };

/** What processes of ranges run: tinypool starts its own file, which looks for it beside itself, and that loads the other. */
const RANGE_PROCESSES = {
  "range-worker": "src/range/disk/range-worker.ts",
  "entry/process": "./node_modules/tinypool/dist/entry/process.js",
};

/** The queue's library and its client to Redis: one file for program and library, since it is a twentieth of the package. */
const QUEUE_LIBRARY = "src/range/disk/queue/library.ts";

const isQueueLibrary = (id) => id.replaceAll("\\", "/").endsWith(QUEUE_LIBRARY);

/** What that library could use in place of Redis, and what it does without. */
const QUEUE_OTHERS = [
  ...["pg", "redis", "bullmq-otel", "@valkey/valkey-glide"],
  ...["msgpackr-extract", "supports-color"],
];

/** The files that are bundled for themselves, seen from a folder of dist. */
const pathsFrom = (folder) => (id) => {
  if (isQueueLibrary(id)) return `${folder}/queue/library.js`;
  return SELF_LOADING[id] === undefined ? id : `${folder}/wasm/${SELF_LOADING[id]}.js`;
};

const apart = (id) => SELF_LOADING[id] !== undefined || isQueueLibrary(id);

export default defineAll([
  {
    input: {
      index: "src/index.ts",
      sizes: "src/entries/sizes.ts",
      stones: "src/entries/stones.ts",
      fit: "src/entries/fit.ts",
      three: "src/entries/three.ts",
      node: "src/entries/node.ts",
      worker: "src/entries/worker.ts",
      view: "src/entries/view.ts",
      range: "src/entries/range.ts",
      ...RANGE_PROCESSES,
    },
    external: (id) => id === "three" || id.startsWith("three/addons/") || id.startsWith("node:") || apart(id),
    output: { dir: "dist", paths: pathsFrom("."), chunkFileNames: "[name]-[hash].js", sourcemap: true },
  },
  {
    input: { main: "src/cli/main.ts", ...RANGE_PROCESSES },
    external: apart,
    platform: "node",
    output: { dir: "dist/bin", paths: pathsFrom("..") },
  },
  {
    input: Object.fromEntries(Object.entries(SELF_LOADING).map(([name, file]) => [file, name])),
    output: { dir: "dist/wasm", chunkFileNames: "[name].js" },
    plugins: [selfLoading()],
  },
  {
    input: { library: QUEUE_LIBRARY },
    external: (id) => id.startsWith("node:") || QUEUE_OTHERS.includes(id),
    platform: "node",
    resolve: { ...SHARED.resolve, mainFields: ["module", "main"] },
    output: { dir: "dist/queue", codeSplitting: false, minify: true },
  },
]);

function defineAll(configs) {
  return configs.map(({ output, plugins = [], ...rest }) => ({
    ...SHARED,
    ...rest,
    plugins: [...plugins, bundledPackages()],
    output: { format: "esm", minify: DENSE, ...output },
  }));
}
