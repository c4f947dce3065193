// Across: the built program
/**
 * The program as a process of its own, as it is built. Skipped where it is not: `npm run build` makes it.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, openSync, readFileSync, statSync, truncateSync } from "node:fs";
import { join } from "node:path";
import type { Readable } from "node:stream";
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
  return Object.assign(child, { out: hear(child.stdout), err: hear(child.stderr) });
}

/** What a stream has said so far. */
function hear(stream: Readable | null): () => string {
  let heard = "";
  stream?.on("data", (chunk) => {
    heard += chunk;
  });
  return () => heard;
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
      out: expect.stringMatching(/^\{\s+"errors": \[/),
      err: expect.stringMatching(/too large/),
    });
  });

  it("does not mind a reader that stops early", async () => {
    const child = start(["sizes", "--json"]);
    child.stdout?.destroy();
    const [code] = await once(child, "close");
    expect({ code, err: child.err() }).toEqual({ code: 0, err: "" });
  });

  // /dev/full takes nothing, as a disk that is full.
  it.skipIf(!existsSync("/dev/full"))("says in one line that standard output cannot be written", async () => {
    const full = openSync("/dev/full", "w");
    const child = spawn(process.execPath, [MAIN, "sizes"], { stdio: ["ignore", full, "pipe"] });
    const said = hear(child.stderr);
    const [code] = await once(child, "close");
    expect({ code, err: said() }).toEqual({
      code: 2,
      err: "error: standard output cannot be written: the disk is full.\n",
    });
  });

  it("says in one line that its folder has been deleted", async () => {
    const script = `cd "$(mktemp -d)" && rmdir "$PWD" && exec "${process.execPath}" "${MAIN}" make - -o ring.stl`;
    const child = spawn("sh", ["-c", script], { stdio: ["ignore", "ignore", "pipe"] });
    const said = hear(child.stderr);
    const [code] = await once(child, "close");
    expect(code).toBe(2);
    expect(said()).toMatch(/^error: The folder that annulet was started in cannot be used: it is not there\.\n/);
  });

  it("keeps the design that standard input comes from", async () => {
    const design = put(tempFolder(), "ring.json", PLAIN);
    const input = openSync(design, "r");
    const child = spawn(process.execPath, [MAIN, "make", "-", "--report", design], {
      stdio: [input, "ignore", "pipe"],
    });
    const [code] = await once(child, "close");
    expect(code).toBe(2);
    expect(readFileSync(design, "utf8")).toBe(JSON.stringify(PLAIN));
  });

  it("takes away what a killed run has left, at the next run into the folder", async () => {
    const folder = tempFolder();
    const child = start(["make", "-", "-o", join(folder, "ring.obj")]);
    child.stdin?.end(JSON.stringify({ ...SLOW, tolerance: 0.003 }));
    const ended = once(child, "close");
    const left = () => namesIn(folder).filter((name) => name.endsWith(".tmp"));
    // The probe of the folder is gone at once; what stays is the mesh, as it is written.
    for (let i = 0; i < 3000 && !left().some((name) => statSync(join(folder, name)).size > 0); i++) {
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    child.kill("SIGKILL");
    await ended;
    const plain = put(folder, "plain.json", PLAIN);
    expect((await finish(["make", plain, "-o", join(folder, "plain.stl")])).code).toBe(0);
    expect(left()).toEqual([]);
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
