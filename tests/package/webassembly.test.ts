// Covers: src/art/text/engine.ts
/**
 * WebAssembly that is missing or elsewhere, in processes of their own, since each library is loaded once a process. Skipped
 * where the package is not built: `npm run build`.
 */
import { execFile } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pathOf } from "../support/fonts.js";
import { installPackage } from "../support/installed.js";

const BUILT = existsSync(fileURLToPath(new URL("../../dist/index.js", import.meta.url)));

/** A band with relief, for which parts have to be united, and with lettering where it is asked for. */
const START = `
import { readFileSync } from "node:fs";
import { AnnuletError, build, bvhKernel, manifoldKernel } from "annulet";
const band = {
  annulet: 1, size: { diameter: 17 }, tolerance: 0.1,
  profile: { width: 5, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: { symmetry: "p2mm", regions: [{ path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.3 }] },
};
const lettered = { ...band, lettering: [{ text: "IV", font: "font.ttf", height: 1.5, depth: 0.2 }] };
const files = { "font.ttf": readFileSync("font.ttf") };
const told = async (work) => {
  try {
    const { report } = await work();
    return { closed: report.closed, kernel: report.kernel };
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    const { code, path, hint } = error;
    return { code, path, hint };
  }
};
const say = (...answers) => console.log(JSON.stringify(answers));
`;

let folder: string;

beforeAll(() => {
  if (!BUILT) return;
  folder = mkdtempSync(join(tmpdir(), "annulet-wasm-"));
  installPackage(folder);
  // Elsewhere than the library looks for them.
  const wasm = join(folder, "node_modules/annulet/dist/wasm");
  mkdirSync(join(folder, "elsewhere"));
  for (const name of ["manifold", "harfbuzz"]) {
    renameSync(join(wasm, `${name}.wasm`), join(folder, `elsewhere/${name}.wasm`));
  }
  writeFileSync(join(folder, "start.mjs"), START);
});

afterAll(() => {
  if (folder !== undefined) rmSync(folder, { recursive: true, force: true });
});

/** What lines print in a process of their own. */
async function run(lines: string): Promise<unknown> {
  const { symlinkSync } = await import("node:fs");
  const font = join(folder, "font.ttf");
  if (!existsSync(font)) symlinkSync(pathOf("nunito"), font);
  const words = ["--input-type=module", "--eval", START + lines];
  const { stdout } = await promisify(execFile)(process.execPath, words, { cwd: folder });
  return JSON.parse(stdout);
}

describe.skipIf(!BUILT)("WebAssembly that lies elsewhere", () => {
  it("is an error that says so, and is taken from where it is told to be afterwards", async () => {
    const [band, lettering, again, bytes] = (await run(`
      const { pathToFileURL } = await import("node:url");
      const wasm = {
        manifold: pathToFileURL("elsewhere/manifold.wasm"),
        harfbuzz: pathToFileURL("elsewhere/harfbuzz.wasm").href,
      };
      say(
        await told(() => build(band)),
        await told(() => build(lettered, { files })),
        await told(() => build(band, { wasm })),
        await told(() => build(lettered, { files, wasm })),
      );`)) as Record<string, unknown>[];
    expect(band).toMatchObject({ code: "kernel-unavailable", hint: expect.stringMatching(/manifold\.wasm.*bvh/) });
    expect(lettering).toMatchObject({ code: "text-engine-unavailable" });
    expect(lettering.hint).toMatch(/annulet\/harfbuzz\.wasm/);
    expect(again).toEqual({ closed: true, kernel: "manifold" });
    expect(bytes).toEqual({ closed: true, kernel: "manifold" });
  });

  it("is taken as bytes, in an array or a buffer", async () => {
    const [made] = (await run(`
      const manifold = readFileSync("elsewhere/manifold.wasm");
      const { buffer, byteOffset, byteLength } = readFileSync("elsewhere/harfbuzz.wasm");
      const harfbuzz = buffer.slice(byteOffset, byteOffset + byteLength);
      say(await told(() => build(lettered, { files, wasm: { manifold, harfbuzz } })));`)) as unknown[];
    expect(made).toEqual({ closed: true, kernel: "manifold" });
  });
});

describe.skipIf(!BUILT)("without WebAssembly", () => {
  it("bands are united by the bvh kernel; lettering, and a kernel that does not do, are errors with other advice", async () => {
    const [band, lettering, plain, taken] = (await run(`
      delete globalThis.WebAssembly;
      // Half of what it unites is not there.
      const open = ({ positions, triangles }) => ({ positions, triangles: triangles.slice(3 * (triangles.length >> 3)) });
      const leaky = { ...bvhKernel, union: async (parts) => open(await bvhKernel.union(parts)) };
      const pane = { ...band, pattern: undefined, beads: [{ along: { v: 0 }, diameter: 0.9, count: 6 }] };
      say(
        await told(() => build(band)),
        await told(() => build(lettered, { files, kernel: bvhKernel })),
        await told(() => build(pane, { kernel: bvhKernel })),
        await told(() => build(pane, { kernel: leaky })),
      );`)) as Record<string, unknown>[];
    expect(band).toMatchObject({ code: "kernel-unavailable", hint: expect.stringMatching(/switched off.*bvh/) });
    expect(lettering).toMatchObject({ code: "text-engine-unavailable" });
    expect(lettering.hint).toMatch(/switched off/);
    expect(plain).toEqual({ closed: true, kernel: "bvh" });
    expect(taken.code).toBe("kernel-unavailable");
    expect(taken.hint).not.toMatch(/take the bvh kernel/);
  });
});
