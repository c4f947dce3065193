// Across: ranges made by processes, as the package ships them
/**
 * `annulet range` as it is built: by several processes, killed in the middle, ended by Ctrl-C, in a folder that cannot be written.
 */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { PLAIN, put, tempFolder } from "../cli/support.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const PROGRAM = join(ROOT, "dist/bin/main.js");

const PLAN = {
  range: 1,
  base: { ...PLAIN, name: "Heron", tolerance: 0.2 },
  vary: [{ size: { system: "diameter", from: 16, to: 17.1, step: 0.1 } }],
  outputs: ["stl"],
};

function range(folder: string, ...words: string[]): ChildProcess {
  return spawn(process.execPath, [PROGRAM, "range", join(folder, "plan.json"), "-o", join(folder, "out"), ...words], {
    stdio: ["ignore", "pipe", "pipe"],
  });
}

/** Runs to the end; its exit code and what it printed. */
function whole(folder: string, ...words: string[]) {
  const args = [PROGRAM, "range", join(folder, "plan.json"), "-o", join(folder, "out"), ...words];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  return { status, stdout, stderr };
}

const stlsIn = (folder: string) =>
  existsSync(join(folder, "out/rings"))
    ? readdirSync(join(folder, "out/rings")).filter((name) => name.endsWith(".stl"))
    : [];

/** Ends it once some rings are there. */
async function endedEarly(child: ChildProcess, folder: string, signal: NodeJS.Signals): Promise<number | null> {
  const gone = new Promise<number | null>((resolve) => child.once("exit", (code) => resolve(code)));
  while (stlsIn(folder).length < 3) await new Promise((resolve) => setTimeout(resolve, 20));
  child.kill(signal);
  return gone;
}

const LONG = { timeout: 120_000 };

describe.skipIf(!existsSync(join(ROOT, "dist/bin/range-worker.js")))("annulet range", () => {
  it("goes on after kill -9 to the bytes of a run that nobody ended", LONG, async () => {
    const [killed, sound] = [tempFolder(), tempFolder()];
    for (const folder of [killed, sound]) put(folder, "plan.json", PLAN);
    await endedEarly(range(killed, "--jobs", "2"), killed, "SIGKILL");
    expect(existsSync(join(killed, "out/manifest.json"))).toBe(false);
    // Whole files only: a binary STL says how many triangles follow its head of 84 bytes, 50 each.
    for (const name of stlsIn(killed)) {
      const stl = readFileSync(join(killed, "out/rings", name));
      expect(stl.length).toBe(84 + 50 * stl.readUInt32LE(80));
    }
    expect(whole(sound, "--jobs", "1").status).toBe(0);
    const { status, stderr } = whole(killed, "--jobs", "2");
    expect([status, stderr]).toEqual([0, expect.stringMatching(/[1-9]\d* kept as they were, 0 left out, 0 failed/)]);
    const manifest = (folder: string) => readFileSync(join(folder, "out/manifest.json"), "utf8");
    expect(manifest(killed)).toBe(manifest(sound));
    expect(whole(killed, "--verify").status).toBe(0);
    // Nothing of the run that was killed is left.
    const hidden = readdirSync(join(killed, "out"), { recursive: true, encoding: "utf8" });
    expect(hidden.filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });

  it("ends clean by Ctrl-C, and says that it goes on", LONG, async () => {
    const folder = tempFolder();
    put(folder, "plan.json", PLAN);
    const child = range(folder, "--jobs", "1");
    let said = "";
    child.stderr?.on("data", (data) => {
      said += data;
    });
    expect(await endedEarly(child, folder, "SIGINT")).toBe(130);
    expect(said).toContain("goes on from there");
  });

  it("kills a variant that never ends, and makes the others", LONG, () => {
    const folder = tempFolder();
    const tangled = Array.from({ length: 900 }, (_, i) => `M ${(i * 0.618) % 1} -0.4 L ${(i * 0.382) % 1} 0.4`).join(
      " ",
    );
    const pattern = { regions: [{ path: tangled, ribbon: { width: 0.02 }, height: 0.3 }] };
    const vary = [{ rows: [{ name: "sound" }, { name: "endless", pattern }, { name: "other" }] }];
    put(folder, "plan.json", { ...PLAN, vary, name: "{name}" });
    const { status, stderr } = whole(folder, "--jobs", "1", "--max-seconds", "2");
    expect(stlsIn(folder).sort()).toEqual(["other.stl", "sound.stl"]);
    expect([status, stderr]).toEqual([1, expect.stringContaining("endless")]);
  });

  it("says that a folder cannot be one", LONG, () => {
    const folder = tempFolder();
    put(folder, "plan.json", PLAN);
    put(folder, "out", "");
    expect(whole(folder)).toMatchObject({ status: 2, stderr: expect.stringContaining("is a file, not a folder") });
  });
});
