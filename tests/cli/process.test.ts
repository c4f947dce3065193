// Across: the built program
/**
 * The program as a process of its own, as it is built. Skipped where it is not: `npm run build` makes it.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync, truncateSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it, onTestFinished } from "vitest";
import { namesIn, PLAIN, PROUD, put, tempFolder } from "./support.js";

const MAIN = fileURLToPath(new URL("../../dist/bin/main.js", import.meta.url));

/** A ring that takes seconds: the finest mesh a document may ask for, under 4 000 beads. */
const SLOW = {
  ...PLAIN,
  name: "slow",
  tolerance: 0.001,
  profile: { ...PLAIN.profile, width: 10 },
  beads: Array.from({ length: 20 }, (_, i) => ({ along: { v: i * 0.4 - 3.8 }, diameter: 0.3 })),
};

function start(words: readonly string[]): ChildProcess & { out: () => string; err: () => string } {
  const child = spawn(process.execPath, [MAIN, ...words], { stdio: "pipe" });
  onTestFinished(() => {
    child.kill("SIGKILL");
  });
  const heard = { out: "", err: "" };
  child.stdout.on("data", (chunk) => {
    heard.out += chunk;
  });
  child.stderr.on("data", (chunk) => {
    heard.err += chunk;
  });
  return Object.assign(child, { out: () => heard.out, err: () => heard.err });
}

async function finish(words: readonly string[]) {
  const child = start(words);
  const [code] = await once(child, "close");
  return { code, out: child.out(), err: child.err() };
}

describe.skipIf(!existsSync(MAIN))("the built program", () => {
  it("makes a ring", async () => {
    const folder = tempFolder();
    const { code, out, err } = await finish(["make", put(folder, "ring.json", PLAIN), "-o", join(folder, "ring.stl")]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^closed +yes$/m);
    // Binary STL: 80 bytes of header, a count, 50 bytes a triangle.
    const bytes = readFileSync(join(folder, "ring.stl"));
    expect(bytes.length).toBe(84 + 50 * bytes.readUInt32LE(80));
    expect(namesIn(folder)).toEqual(["ring.json", "ring.stl"]);
  });

  it("hands on its exit codes", async () => {
    const folder = tempFolder();
    const proud = put(folder, "proud.json", PROUD);
    const codes = [
      (await finish(["--version"])).code,
      (await finish(["make", proud, "-o", join(folder, "a.stl")])).code,
      (await finish(["make", proud, "-o", join(folder, "a.step")])).code,
    ];
    expect(codes).toEqual([0, 1, 2]);
  });

  it("reads a pipe, and turns away 100 MB unread", async () => {
    const child = start(["make", "-", "--json", "--quiet"]);
    child.stdin?.end(JSON.stringify(PLAIN));
    const [code] = await once(child, "close");
    expect({ code, err: child.err() }).toEqual({ code: 0, err: "" });
    expect(JSON.parse(child.out()).closed).toBe(true);
    const huge = put(tempFolder(), "huge.json", "");
    truncateSync(huge, 100e6);
    expect(await finish(["make", huge, "--json"])).toMatchObject({
      code: 2,
      out: "",
      err: expect.stringMatching(/too large/),
    });
  });

  it("does not mind a reader that stops early", async () => {
    const child = start(["sizes", "--json"]);
    child.stdout?.destroy();
    const [code] = await once(child, "close");
    expect({ code, err: child.err() }).toEqual({ code: 0, err: "" });
  });

  it.each([true, false])("leaves no file behind on Ctrl-C while it builds (old file there: %s)", async (replaces) => {
    const folder = tempFolder();
    const target = replaces ? put(folder, "ring.stl", "old") : join(folder, "ring.stl");
    const before = namesIn(folder);
    const child = start(["make", "-", "-o", target]);
    child.stdin?.end(JSON.stringify(SLOW));
    // Long enough for the build to have begun, far too short for it to end.
    const ended = once(child, "close");
    const finished = await Promise.race([ended, new Promise((resolve) => setTimeout(resolve, 1500, undefined))]);
    expect(finished, `it ended before the signal: ${child.out()}${child.err()}`).toBeUndefined();
    child.kill("SIGINT");
    const [code, signal] = await ended;
    // A shell shows the death by this signal as 130.
    expect({ code, signal }).toEqual({ code: null, signal: "SIGINT" });
    expect(child.out()).toBe("");
    expect(namesIn(folder)).toEqual(before);
    if (replaces) expect(readFileSync(target, "utf8")).toBe("old");
  });
});
