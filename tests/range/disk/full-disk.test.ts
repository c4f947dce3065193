// Across: ranges on a disk that is full
/**
 * A disk of a few kilobytes, as a file system in memory. Mounting one takes root: skipped where it cannot be done.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { makeRange } from "../../../src/range/disk/make-range.js";
import { makeVariants } from "../../../src/range/disk/make-variant.js";
import type { RangeEvent } from "../../../src/range/disk/range-run.js";
import { verifyRange } from "../../../src/range/disk/verify-range.js";
import { PLAIN } from "../../cli/support.js";

const BASE = { ...PLAIN, name: "Heron", tolerance: 0.2 };

/** Two small rings, and one of 127 kB between them. */
const PLAN = {
  range: 1,
  base: BASE,
  vary: [{ rows: [{ name: "first" }, { name: "large", tolerance: 0.001 }, { name: "last" }] }],
  name: "{name}",
  outputs: ["stl"],
};

const mount = (folder: string, options: string) =>
  spawnSync("mount", ["-t", "tmpfs", "-o", options, "none", folder]).status === 0;

function disk(kilobytes: number): { readonly folder: string; grow(kilobytes: number): void } | undefined {
  const folder = mkdtempSync(join(tmpdir(), "annulet-disk-"));
  if (!mount(folder, `size=${kilobytes}k`)) {
    rmSync(folder, { recursive: true });
    return undefined;
  }
  return { folder, grow: (more) => void mount(folder, `remount,size=${more}k`) };
}

function unmount(folder: string): void {
  spawnSync("umount", ["-l", folder]);
  rmSync(folder, { recursive: true, force: true });
}

const trial = disk(64);
if (trial !== undefined) unmount(trial.folder);

function smallDisk(kilobytes: number) {
  const made = disk(kilobytes);
  if (made === undefined) return expect.fail("no disk");
  onTestFinished(() => unmount(made.folder));
  return made;
}

async function run(plan: object, folder: string) {
  const events: RangeEvent[] = [];
  const range = makeRange(plan, { folder, makers: { make: makeVariants, end: async () => {} }, jobs: 1 });
  let step = await range.next();
  for (; step.done !== true; step = await range.next()) events.push(step.value);
  return { manifest: step.value, told: events.map(({ name, kind }) => [name, kind]) };
}

const hidden = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".tmp"));

describe.skipIf(trial === undefined)("a disk", () => {
  it("that is too small for one ring has all others, and that one once there is room", async () => {
    const { folder, grow } = smallDisk(130);
    const { told, manifest } = await run(PLAN, folder);
    expect(told).toEqual([
      ["first", "made"],
      ["large", "failed"],
      ["last", "made"],
    ]);
    const why = expect.stringMatching(/^output-failed: .*the disk is full\. Nothing was written/);
    expect(manifest.failed).toEqual([{ name: "large", why }]);
    expect(hidden(folder)).toEqual([]);
    expect((await verifyRange(folder)).deviations).toEqual([]);
    grow(4000);
    expect((await run(PLAN, folder)).told).toEqual([
      ["first", "kept"],
      ["large", "made"],
      ["last", "kept"],
    ]);
  });

  it("that is full leaves the range as it was, and says so; the next run goes on", async () => {
    const { folder } = smallDisk(160);
    const small = { ...PLAN, vary: [{ rows: [{ name: "first" }, { name: "last" }] }] };
    await run(small, folder);
    const before = readFileSync(join(folder, "manifest.json"), "utf8");
    const filler = join(folder, "filler");
    for (let kilobytes = 160; kilobytes > 0; kilobytes -= 4) {
      try {
        writeFileSync(filler, new Uint8Array(1024 * kilobytes));
        break;
      } catch {
        // As much as there is room for.
      }
    }
    const changed = { ...small, base: { ...BASE, profile: { ...BASE.profile, thickness: 1.7 } } };
    await expect(run(changed, folder)).rejects.toMatchObject({ code: "output-failed", message: /the disk is full/ });
    expect(readFileSync(join(folder, "manifest.json"), "utf8")).toBe(before);
    expect((await verifyRange(folder)).deviations).toEqual([]);
    expect(hidden(folder)).toEqual([]);
    rmSync(filler);
    expect((await run(changed, folder)).told).toEqual([
      ["first", "made"],
      ["last", "made"],
    ]);
  });
});
