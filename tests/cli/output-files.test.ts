// Covers: src/disk/output-errors.ts, src/cli/signals.ts
import { chmodSync, mkdirSync, readFileSync, statSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Output, writeOutputs } from "../../src/cli/output-files.js";
import { checkTargets } from "../../src/cli/targets.js";
import { namesIn, put, tempFolder } from "./support.js";

async function outputs(contents: Readonly<Record<string, () => string>>): Promise<Output[]> {
  const targets = await checkTargets(Object.keys(contents));
  return targets.map((target) => ({ target, chunks: () => [Buffer.from(contents[target.path]())] }));
}

describe("writing outputs", () => {
  it("puts whole files in place of old ones, with their permissions, behind links", async () => {
    const folder = tempFolder();
    const old = put(folder, "old.stl", "old");
    chmodSync(old, 0o640);
    symlinkSync(old, join(folder, "link.stl"));
    const written = await writeOutputs(
      await outputs({ [join(folder, "link.stl")]: () => "new", [join(folder, "b.obj")]: () => "other" }),
    );
    expect(written.map(({ size }) => size)).toEqual([3, 5]);
    expect(readFileSync(old, "utf8")).toBe("new");
    expect(statSync(old).mode & 0o777).toBe(0o640);
    expect(namesIn(folder)).toEqual(["b.obj", "link.stl", "old.stl"]);
  });

  it("leaves everything as it was when one file cannot be made", async () => {
    const folder = tempFolder();
    const old = put(folder, "old.stl", "old");
    const fails = () => {
      throw new RangeError("no memory");
    };
    await expect(writeOutputs(await outputs({ [old]: () => "new", [join(folder, "b.obj")]: fails }))).rejects.toThrow(
      "no memory",
    );
    expect(readFileSync(old, "utf8")).toBe("old");
    expect(namesIn(folder)).toEqual(["old.stl"]);
  });

  it("takes the others back when a later one cannot be put in its place", async () => {
    const folder = tempFolder();
    const old = put(folder, "old.stl", "old");
    const fresh = join(folder, "fresh.stl");
    const last = join(folder, "last.json");
    const blocks = () => {
      mkdirSync(last);
      return "last";
    };
    const failure = writeOutputs(await outputs({ [old]: () => "new", [fresh]: () => "fresh", [last]: blocks }));
    await expect(failure).rejects.toMatchObject({
      code: "output-failed",
      message: expect.stringMatching(
        /^\S+last\.json cannot be put in its place: it is a folder\. Nothing was written\./,
      ),
    });
    expect(readFileSync(old, "utf8")).toBe("old");
    expect(namesIn(folder)).toEqual(["last.json", "old.stl"]);
  });

  it("tells later outputs the digests of earlier ones", async () => {
    const folder = tempFolder();
    const [mesh, report] = await checkTargets([join(folder, "a.stl"), join(folder, "a.json")]);
    const written = await writeOutputs([
      { target: mesh, chunks: () => [Buffer.from("a"), Buffer.from("bc")] },
      { target: report, chunks: (before) => [Buffer.from(before.map(({ sha256 }) => sha256).join())] },
    ]);
    // "abc" is the first worked example of FIPS 180-4's SHA-256, as NIST publishes it.
    const digest = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    expect(written[0].sha256).toBe(digest);
    expect(readFileSync(join(folder, "a.json"), "utf8")).toBe(digest);
  });

  it.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)(
    "leaves nothing behind when %s comes while it writes",
    async (signal) => {
      const folder = tempFolder();
      const old = put(folder, "old.stl", "old");
      const before = process.listenerCount(signal);
      const raise = () => {
        process.kill(process.pid, signal);
        return "new";
      };
      const failure = writeOutputs(await outputs({ [old]: raise, [join(folder, "b.obj")]: () => "other" }));
      await expect(failure).rejects.toMatchObject({ name: "Interrupted", message: "interrupted: nothing was written" });
      expect(readFileSync(old, "utf8")).toBe("old");
      expect(namesIn(folder)).toEqual(["old.stl"]);
      expect(process.listenerCount(signal)).toBe(before);
    },
  );
});
