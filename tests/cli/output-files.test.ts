// Covers: src/cli/output-errors.ts, src/cli/signals.ts
import { chmodSync, linkSync, mkdirSync, readFileSync, statSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkTargets, type Output, writeOutputs } from "../../src/cli/output-files.js";
import { namesIn, put, tempFolder } from "./support.js";

async function outputs(contents: Readonly<Record<string, () => string>>): Promise<Output[]> {
  const targets = await checkTargets(Object.keys(contents));
  return targets.map((target) => ({ target, chunks: () => [Buffer.from(contents[target.path]())] }));
}

describe("checking targets", () => {
  it("says everything that is in the way", async () => {
    const folder = tempFolder();
    const source = put(folder, "ring.json", "{}");
    mkdirSync(join(folder, "a.stl"));
    const paths = ["a.stl", "no/b.stl", "c.stl", "./c.stl", "ring.json"].map((path) => `${folder}/${path}`);
    const failed = await checkTargets([...paths, "-", "/dev/null"], source).catch((error) => error);
    expect(failed.problems.map((problem: { code: string }) => problem.code)).toEqual([
      "output-is-folder",
      "output-folder-missing",
      "output-twice",
      "output-is-input",
      "output-to-stdout",
      "output-not-writable",
    ]);
    expect(namesIn(folder)).toEqual(["a.stl", "ring.json"]);
  });

  it("knows the input by another name", async () => {
    const folder = tempFolder();
    const source = put(folder, "ring.json", "{}");
    linkSync(source, join(folder, "twin.json"));
    await expect(checkTargets([join(folder, "twin.json")], source)).rejects.toMatchObject({ code: "output-is-input" });
  });

  // Even the superuser cannot make files in /proc.
  it("notices a folder that no file can be made in", async () => {
    await expect(checkTargets(["/proc/ring.stl"])).rejects.toMatchObject({ code: "output-not-writable" });
  });
});

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

  it("says which files were written when a later one cannot be put in its place", async () => {
    const folder = tempFolder();
    const first = join(folder, "a.stl");
    const second = join(folder, "b.stl");
    const blocks = () => {
      mkdirSync(second);
      return "b";
    };
    const failure = writeOutputs(await outputs({ [first]: () => "a", [second]: blocks }));
    await expect(failure).rejects.toMatchObject({
      code: "output-failed",
      message: expect.stringContaining(`Written: ${first}`),
    });
    expect(readFileSync(first, "utf8")).toBe("a");
    expect(namesIn(folder)).toEqual(["a.stl", "b.stl"]);
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
