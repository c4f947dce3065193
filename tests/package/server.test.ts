// Across: the examples for scripts and servers
/**
 * `examples/server.ts` and `examples/many.ts`, run as they stand on what is built: a sound design, hostile ones, and more than
 * the server takes.
 */
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { readMesh } from "../../src/output/files/read-mesh.js";
import { PLAIN } from "../cli/support.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

const ROUGH = { ...PLAIN, tolerance: 0.1 };

/** Takes far longer than the server gives: thousands of crossing lines. */
const ENDLESS = {
  ...ROUGH,
  pattern: {
    regions: [
      {
        path: Array.from({ length: 900 }, (_, i) => `M ${(i * 0.618) % 1} -0.4 L ${(i * 0.382) % 1} 0.4`).join(" "),
        ribbon: { width: 0.02 },
        height: 0.3,
      },
    ],
  },
};

describe.skipIf(!existsSync(join(ROOT, "dist/node.js")))("the examples", () => {
  let folder: string;
  let server: ChildProcess;
  let url: string;

  beforeAll(async () => {
    // Inside the package's folder, so that `annulet` is the package itself.
    mkdirSync(join(ROOT, "build"), { recursive: true });
    folder = mkdtempSync(join(ROOT, "build/examples-"));
    const entryPoints = ["server", "many", "ring-pool", "ring-worker"].map((name) => join(ROOT, `examples/${name}.ts`));
    await build({ entryPoints, outdir: folder, format: "esm", platform: "node" });
    const env = { ...process.env, RING_SECONDS: "3" };
    server = spawn(process.execPath, [join(folder, "server.js")], { env, stdio: ["ignore", "pipe", "inherit"] });
    const lines = createInterface({ input: server.stdout as NodeJS.ReadableStream });
    url = await new Promise((resolve) => lines.once("line", resolve));
  });

  afterAll(async () => {
    const gone = new Promise((resolve) => server.once("exit", resolve));
    server.kill("SIGTERM");
    await gone;
    rmSync(folder, { recursive: true });
  });

  const post = (body: string) => fetch(url, { method: "POST", body });

  it("give a closed ring for a design", async () => {
    const response = await post(JSON.stringify(ROUGH));
    expect([response.status, response.headers.get("content-type")]).toEqual([200, "model/stl"]);
    const mesh = await readMesh(new Uint8Array(await response.arrayBuffer()), "ring.stl");
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1, genus: 1 });
  });

  it.each<[string, string, number, string]>([
    ["no JSON", "{", 422, "json-malformed"],
    ["no design", '{"annulet": 1, "size": 3}', 422, "value-missing"],
    [
      "a file of the server",
      JSON.stringify({ ...ROUGH, pattern: { regions: [{ svg: "../../etc/passwd", height: 0.2 }] } }),
      422,
      "svg-file-missing",
    ],
    ["a megabyte", `"${"x".repeat(1_000_000)}"`, 413, "document-too-large"],
    [
      "more triangles than it may have",
      JSON.stringify({ ...ROUGH, tolerance: 0.001, beads: [{ along: "seat-middle", diameter: 0.01, height: 0 }] }),
      422,
      "",
    ],
    ["work without end", JSON.stringify(ENDLESS), 422, ""],
  ])("refuse %s, and go on", async (_, body, status, code) => {
    const response = await post(body);
    const { errors } = (await response.json()) as { errors: readonly { code: string }[] };
    expect(errors.length).toBeGreaterThan(0);
    if (code !== "") expect(errors[0].code).toBe(code);
    expect(response.status === status || response.status === 504).toBe(true);
    expect((await post(JSON.stringify(ROUGH))).status).toBe(200);
  });

  it("turn away those for whom there is no room, and work the others", async () => {
    const many = await Promise.all(Array.from({ length: 40 }, () => post(JSON.stringify(ROUGH))));
    const codes = many.map(({ status }) => status);
    expect(new Set(codes)).toEqual(new Set([200, 429]));
    expect(many.find(({ status }) => status === 429)?.headers.get("retry-after")).toBe("3");
    expect((await post(JSON.stringify(ROUGH))).status).toBe(200);
  });

  it("make many variants", () => {
    const out = execFileSync(process.execPath, [join(folder, "many.js"), "3"], { encoding: "utf8" });
    expect(out).toMatch(/3 of 3 made by \d+ workers/);
  });
});
