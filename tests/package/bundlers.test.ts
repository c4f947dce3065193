// Across: the built package in a page's worker, by each bundler
/**
 * The lines of examples/guide/browser.md in Chromium: a worker that makes a ring with lettering, under the strictest policy
 * that allows WebAssembly. Skipped where there is no browser or the package is not built: `npm run build`.
 */
import { cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BuildResult, build, type Report } from "annulet";
import { build as esbuild } from "esbuild";
import { createServer, build as viteBuild } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser, openPage, serve } from "../support/browser.js";
import { bytesOf, pathOf } from "../support/fonts.js";
import { guideBlock } from "../support/guide-block.js";
import { installPackage } from "../support/installed.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

const POLICY = "script-src 'self' 'wasm-unsafe-eval'";
/** Without WebAssembly. */
const NO_WASM = "script-src 'self'";

const design = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: { symmetry: "p2mm", regions: [{ path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.3 }] },
  lettering: [{ text: "IV", font: "font.ttf", height: 1.5, depth: 0.2 }],
};

/** What the page hands back: what the worker posted, without its arrays. */
interface Answer {
  readonly report?: Report;
  readonly error?: string;
  readonly positions?: number;
  readonly normals?: number;
  readonly triangles?: number;
}

/** What the guide's page leaves to the app: the design, its font, and what is done with the ring. */
const APP = `
const lengths = ({ positions, normals, triangles, ...rest }) =>
  ({ ...rest, positions: positions?.length, normals: normals?.length, triangles: triangles?.length });
let show;
globalThis.answer = new Promise((done) => { show = (data) => done(lengths(data)); });
const design = ${JSON.stringify(design)};
const font = await (await fetch("./font.ttf")).arrayBuffer();
const files = { "font.ttf": new Uint8Array(font) };
`;

const PAGE = '<!doctype html><title>ring</title><script type="module" src="./main.js"></script>';

let app: string;

beforeAll(() => {
  if (!hasBrowser() || !existsSync(join(ROOT, "dist/index.js"))) return;
  app = mkdtempSync(join(tmpdir(), "annulet-app-"));
  installPackage(app);
  writeFileSync(join(app, "index.html"), PAGE);
  writeFileSync(join(app, "main.js"), APP + guideBlock("main.js"));
  writeFileSync(join(app, "worker.js"), guideBlock("worker.js"));
  cpSync(pathOf("nunito"), join(app, "public/font.ttf"));
});

afterAll(() => {
  if (app !== undefined) rmSync(app, { recursive: true, force: true });
});

/** Opens what lies in a folder of the app, under a policy. */
async function openBuilt(folder: string, policy = POLICY): Promise<Answer> {
  const out = join(app, folder);
  if (!existsSync(join(out, "index.html"))) writeFileSync(join(out, "index.html"), PAGE);
  cpSync(pathOf("nunito"), join(out, "font.ttf"));
  const server = await serve(out, { "content-security-policy": policy });
  try {
    return (await openPage(server.address)) as Answer;
  } finally {
    await server.close();
  }
}

describe.skipIf(!hasBrowser() || !existsSync(join(ROOT, "dist/index.js")))("a ring from a worker", () => {
  let ringHere: Promise<BuildResult> | undefined;
  const expectRing = async (answer: Answer) => {
    ringHere ??= build(design, { files: { "font.ttf": bytesOf("nunito") } });
    const here = await ringHere;
    expect(answer.error).toBeUndefined();
    expect(answer.report).toMatchObject({ closed: true, kernel: "manifold", triangles: here.report.triangles });
    // Sine and cosine may differ in their last bit from one engine to another.
    expect(answer.report?.volume).toBeCloseTo(here.report.volume, 6);
    expect(answer.triangles).toBe(3 * here.report.triangles);
    expect(answer.normals).toBe(answer.positions);
  };

  it("comes by Vite while developing", async () => {
    const server = await createServer({
      root: app,
      configFile: false,
      logLevel: "error",
      server: { host: "127.0.0.1", port: 0 },
    });
    try {
      await server.listen();
      await expectRing((await openPage(server.resolvedUrls?.local[0] ?? "")) as Answer);
    } finally {
      await server.close();
    }
  });

  it("comes by Vite once built", async () => {
    await viteBuild({
      root: app,
      configFile: false,
      logLevel: "error",
      build: { outDir: "by-vite", minify: false },
    });
    await expectRing(await openBuilt("by-vite"));
  });

  it("comes by webpack", async () => {
    const webpack: typeof import("webpack") = createRequire(import.meta.url)("webpack");
    const output = { path: join(app, "by-webpack"), filename: "main.js" };
    const stats = await new Promise<import("webpack").Stats | undefined>((done, fail) => {
      // Made small it takes three times as long.
      const optimization = { minimize: false };
      const how = { mode: "production", context: app, entry: "./main.js", output, optimization, performance: false };
      webpack(how as import("webpack").Configuration, (error, result) => (error ? fail(error) : done(result)));
    });
    expect(stats?.toJson({ errors: true, warnings: true })).toMatchObject({ errors: [], warnings: [] });
    await expectRing(await openBuilt("by-webpack"));
  });

  it("comes by esbuild with the guide's lines; without WebAssembly it is an error that says what to do", async () => {
    writeFileSync(join(app, "worker.js"), guideBlock("worker.js with esbuild"));
    await esbuild({
      absWorkingDir: app,
      entryPoints: ["main.js", "worker.js"],
      outdir: "by-esbuild",
      bundle: true,
      format: "esm",
      loader: { ".wasm": "file" },
      logLevel: "error",
    });
    await expectRing(await openBuilt("by-esbuild"));
    const refused = await openBuilt("by-esbuild", NO_WASM);
    expect(refused.error).toMatch(/lettering needs WebAssembly/);
    expect(refused.error).toMatch(/'wasm-unsafe-eval'/);
  });
});
