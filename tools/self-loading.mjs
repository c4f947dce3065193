/**
 * The two libraries that load a WebAssembly file, made fit for any place: nothing that a bundler for browsers stumbles
 * over, and nothing that waits when it is imported, so that whoever starts them says where their file is.
 *
 * Both begin with what Emscripten writes. It asks Node for `require` by an import of "module", which webpack and others
 * refuse to resolve for browsers; Node gives the same by `process.getBuiltinModule` without an import.
 *
 * And the schema library, which tries once whether it may compile text: a page whose policy forbids that is told of a violation,
 * and reports it. So it is not tried outside Node.
 */

/** Package → file in dist/wasm, without its ending. */
export const SELF_LOADING = { "manifold-3d": "manifold", harfbuzzjs: "harfbuzz" };

/** Name in node_modules → [what stands there, what is put in its place]. */
const CHANGES = {
  "manifold-3d/manifold.js": [['await import("node:module")', 'process.getBuiltinModule("node:module")']],
  "harfbuzzjs/dist/harfbuzz.js": [['await import("module")', 'process.getBuiltinModule("node:module")']],
  "zod/v4/core/util.js": [
    ["if (globalConfig.jitless) {", "if (globalConfig.jitless || globalThis.process?.versions?.node === undefined) {"],
  ],
  "harfbuzzjs/dist/index.mjs": [
    ["init(await createHarfBuzz());", "export async function startEngine(how) { init(await createHarfBuzz(how)); }"],
  ],
};

/** For rolldown and vitest. */
export function selfLoading() {
  return {
    name: "self-loading",
    transform(code, id) {
      const path = id.replaceAll("\\", "/").split("?")[0];
      const found = Object.entries(CHANGES).find(([name]) => path.endsWith(`/node_modules/${name}`));
      return found === undefined ? undefined : { code: found[1].reduce(put, code), map: null };
    },
  };
}

/** Once, or the library is another than was looked at. */
function put(code, [there, instead]) {
  const parts = code.split(there);
  if (parts.length !== 2)
    throw new Error(`self-loading: ${JSON.stringify(there)} stands there ${parts.length - 1} times`);
  return parts.join(instead);
}
