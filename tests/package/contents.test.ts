// Across: the package as it is packed
/**
 * What an app gets with the package: few megabytes, one dependency, every licence. What is built is looked at where it has
 * been: `npm run build`.
 */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { noticesOf } from "../../tools/notices.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const DIST = join(ROOT, "dist");

/** Most bytes that the package unpacks to. Chosen. */
const MOST_UNPACKED = 24e6;

/** Most bytes of `annulet/sizes` in a page. */
const MOST_SIZES = 15_000;

/** Most bytes of `annulet/fit`: a third of all. Measured 293 000, of which zod and the schema take most. */
const MOST_FIT = 340_000;

/** Most bytes of `annulet/view`, without three. Measured from the sources: 32 800 with stones, 26 600 without. */
const MOST_VIEW = 36_000;

/** Most bytes of a page's side of `annulet/worker`, and of a worker's before it loads the library. Measured 14 200 and 12 700. */
const MOST_WORKER = 18_000;

const described = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));

/** What an app's bundle of some lines comes to: its bytes, and the files that lie in it. */
async function bundle(lines: string): Promise<{ readonly bytes: number; readonly inputs: readonly string[] }> {
  const plugins = [
    {
      name: "annulet",
      setup: ({ onResolve }: import("esbuild").PluginBuild) =>
        onResolve({ filter: /^annulet/ }, ({ path }) => {
          const place = path.replace("annulet", ".");
          return { path: join(ROOT, described.exports[place].default), sideEffects: described.sideEffects };
        }),
    },
  ];
  const result = await build({
    stdin: { contents: lines, resolveDir: ROOT },
    bundle: true,
    minify: true,
    format: "esm",
    external: ["three", "three/*"],
    write: false,
    // What is loaded when needed does not count.
    splitting: true,
    outdir: "page",
    metafile: true,
    absWorkingDir: ROOT,
    plugins,
  });
  return loadedAtOnce(result.metafile.outputs);
}

/** What a page loads at once, of files that import each other. */
function loadedAtOnce(outputs: import("esbuild").Metafile["outputs"]) {
  const open = Object.keys(outputs).filter((path) => outputs[path].entryPoint === "<stdin>");
  const all = new Set(open);
  for (const path of all) {
    for (const { kind, path: other } of outputs[path].imports) {
      if (kind === "import-statement" && outputs[other] !== undefined) all.add(other);
    }
  }
  const files = [...all].map((path) => outputs[path]);
  return {
    bytes: files.reduce((sum, { bytes }) => sum + bytes, 0),
    inputs: files.flatMap(({ inputs }) => Object.keys(inputs)),
  };
}

/** The sources of files in dist, by their maps. */
function sourcesOf(inputs: readonly string[]): string[] {
  const maps = inputs.map((path) => join(ROOT, `${path}.map`)).filter((path) => existsSync(path));
  expect(maps).not.toEqual([]);
  return maps.flatMap((path) => JSON.parse(readFileSync(path, "utf8")).sources as string[]);
}

/** Paths that are for Node alone. */
const NODE_ALONE = ["./node", "./range"];

/** The files in dist that pages may come to load: those of all paths but Node's own, and what they import, at once or later. */
function reachedByPages(): ReadonlySet<string> {
  const paths = Object.entries<string | { readonly default: string }>(described.exports);
  const files = new Set(
    paths.flatMap(([path, place]) =>
      typeof place === "string" || NODE_ALONE.includes(path) ? [] : [join(ROOT, place.default)],
    ),
  );
  for (const file of files) {
    for (const name of importsOf(readFileSync(file, "utf8"))) {
      if (name.startsWith(".")) files.add(join(dirname(file), name));
    }
  }
  return files;
}

function importsOf(text: string): string[] {
  return ts.preProcessFile(text).importedFiles.map(({ fileName }) => fileName);
}

describe("the package's description", () => {
  it("asks for three alone, the app's own or npm's newest, which asks for nothing", () => {
    expect(described.dependencies).toBeUndefined();
    expect(Object.keys(described.peerDependencies)).toEqual(["three"]);
    expect(described.peerDependenciesMeta).toBeUndefined();
    const three = JSON.parse(readFileSync(join(ROOT, "node_modules/three/package.json"), "utf8"));
    expect(three.dependencies ?? {}).toEqual({});
    expect(three.license).toBe("MIT");
  });

  it("tells what it is about, and no place that there is not", () => {
    expect(described.keywords).toContain("ring");
    for (const field of ["repository", "homepage", "bugs"]) expect(described[field]).toBeUndefined();
  });
});

describe.skipIf(!existsSync(join(DIST, "index.js")))("what is built", () => {
  it("is packed with licences, notices and WebAssembly, within a few megabytes", () => {
    const words = ["pack", "--dry-run", "--json", "--ignore-scripts", "--loglevel=error"];
    const [packed] = JSON.parse(execFileSync("npm", words, { cwd: ROOT, encoding: "utf8" }));
    const paths: string[] = packed.files.map(({ path }: { readonly path: string }) => path);
    expect(paths).toEqual(
      expect.arrayContaining([
        "LICENSE",
        "THIRD-PARTY-NOTICES.md",
        "dist/index.js.map",
        "dist/wasm/manifold.wasm",
        "dist/wasm/harfbuzz.wasm",
        "dist/fonts/@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf",
      ]),
    );
    expect(packed.unpackedSize).toBeLessThan(MOST_UNPACKED);
  });

  it("is named in the notices with its licences, all permissive: npm run notices", () => {
    expect(readFileSync(join(ROOT, "THIRD-PARTY-NOTICES.md"), "utf8")).toBe(noticesOf(ROOT));
  });

  it("has a place for each path that is published", () => {
    const places = Object.values<string | Record<string, string>>(described.exports);
    const files = places.flatMap((place) => (typeof place === "string" ? [place] : Object.values(place)));
    expect(files.filter((file) => !existsSync(join(ROOT, file)))).toEqual([]);
  });

  it("imports nothing of Node, and waits for nothing when it is imported", () => {
    const files = reachedByPages();
    expect(files.size).toBeGreaterThan(20);
    for (const file of files) {
      const text = readFileSync(file, "utf8");
      const others = importsOf(text).filter((name) => !name.startsWith("."));
      expect(
        others.filter((name) => name !== "three" && !name.startsWith("three/addons/lines/")),
        file,
      ).toEqual([]);
      expect(waits(ts.createSourceFile(file, text, ts.ScriptTarget.Latest)), `${file} waits`).toBe(false);
    }
  });

  it("gives sizes alone in a few kilobytes, without the schema", async () => {
    const { bytes, inputs } = await bundle(
      'import { resolveSize, sizeTable, sizeSystems } from "annulet/sizes"; console.log(resolveSize, sizeTable, sizeSystems);',
    );
    expect(bytes).toBeGreaterThan(1000);
    expect(bytes).toBeLessThan(MOST_SIZES);
    expect(sourcesOf(inputs).filter((path) => /schema|zod|index/.test(path))).toEqual([]);
  });

  it("gives fits alone without readers of art, kernels and three", async () => {
    const { bytes, inputs } = await bundle('import { fitDesign } from "annulet/fit"; console.log(fitDesign);');
    expect(bytes).toBeLessThan(MOST_FIT);
    const sources = sourcesOf(inputs);
    expect(sources).toEqual(expect.arrayContaining([expect.stringContaining("band/fit/")]));
    const others =
      /src\/(art|flat|relief|solids|judge|output\/files)\/|fast-png|fflate|xmldom|clipper2|three|gltf|saxes/;
    expect(sources.filter((path) => others.test(path))).toEqual([]);
  });
});

describe.skipIf(!existsSync(join(DIST, "view.js")))("what a page takes to show rings", () => {
  it("is small: objects for a scene without three, rings in a worker without the library", async () => {
    const view = await bundle('import * as view from "annulet/view"; console.log(view);');
    expect(view.bytes).toBeLessThan(MOST_VIEW);
    expect(sourcesOf(view.inputs).filter((path) => /zod|src\/(ring|union|art)\//.test(path))).toEqual([]);
    for (const side of ["connectRings", "serveRings"]) {
      const { bytes, inputs } = await bundle(`import { ${side} } from "annulet/worker"; console.log(${side});`);
      expect(bytes, side).toBeGreaterThan(1000);
      expect(bytes, side).toBeLessThan(MOST_WORKER);
      expect(sourcesOf(inputs).filter((path) => /zod|src\/(union|art|solids)\//.test(path))).toEqual([]);
    }
  });
});

/** Whether a module awaits something outside of functions. */
function waits(source: ts.SourceFile): boolean {
  const visit = (node: ts.Node): boolean => {
    if (ts.isFunctionLike(node)) return false;
    return ts.isAwaitExpression(node) || ts.forEachChild(node, (child) => visit(child) || undefined) === true;
  };
  return visit(source);
}
