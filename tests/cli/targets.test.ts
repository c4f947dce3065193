// Covers: src/disk/temporary-files.ts, src/disk/same-file.ts
import { spawnSync } from "node:child_process";
import { linkSync, mkdirSync, openSync, symlinkSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkTargets, keepFiles } from "../../src/cli/targets.js";
import { temporaryBeside } from "../../src/disk/temporary-files.js";
import { failureOf } from "../support/failure-of.js";
import { namesIn, put, tempFolder } from "./support.js";

describe("checking targets", () => {
  it("says everything that is in the way", async () => {
    const folder = tempFolder();
    const source = put(folder, "ring.json", "{}");
    mkdirSync(join(folder, "a.stl"));
    const paths = ["a.stl", "no/b.stl", "c.stl", "./c.stl", "ring.json"].map((path) => `${folder}/${path}`);
    const failed = await checkTargets([...paths, "/dev/null"], source).catch((error) => error);
    expect(failed.problems.map((problem: { code: string }) => problem.code)).toEqual([
      "output-is-folder",
      "output-folder-missing",
      "output-twice",
      "output-is-input",
      "output-not-writable",
    ]);
    expect(namesIn(folder)).toEqual(["a.stl", "ring.json"]);
  });

  it("takes - for a stream, once", async () => {
    const stream = process.stderr;
    expect(await checkTargets(["-"], undefined, stream)).toEqual([{ path: "-", stream }]);
    await expect(checkTargets(["-", "-"], undefined, stream)).rejects.toMatchObject({ code: "output-twice" });
  });

  it("knows the input by another name", async () => {
    const folder = tempFolder();
    const source = put(folder, "ring.json", "{}");
    linkSync(source, join(folder, "twin.json"));
    await expect(checkTargets([join(folder, "twin.json")], source)).rejects.toMatchObject({ code: "output-is-input" });
  });

  it("says at once that a name is too long for a file", async () => {
    const name = join(tempFolder(), `${"n".repeat(260)}.stl`);
    await expect(checkTargets([name])).rejects.toMatchObject({
      code: "output-not-writable",
      message: expect.stringMatching(/its name is too long\./),
    });
  });

  it("takes away what killed runs have left in the folder, and nothing else", async () => {
    const folder = tempFolder();
    const gone = spawnSync(process.execPath, ["--version"]).pid;
    const stays = [
      put(folder, basename(temporaryBeside(join(folder, "a"))), "of this process, which runs"),
      put(folder, `.annulet-00000000-${gone}-0a1b2c3d.tmp`, "of another machine"),
      put(folder, `.annulet-${gone}.tmp`, "not ours"),
    ];
    const left = basename(temporaryBeside(join(folder, "a"))).replace(`-${process.pid}-`, `-${gone}-`);
    put(folder, left, "of a process that is gone");
    await checkTargets([join(folder, "ring.stl")]);
    expect(namesIn(folder)).toEqual(stays.map((path) => basename(path)).sort());
  });

  // Even the superuser cannot make files in /proc.
  it("notices a folder that no file can be made in", async () => {
    await expect(checkTargets(["/proc/ring.stl"])).rejects.toMatchObject({ code: "output-not-writable" });
  });
});

describe("files that a design names", () => {
  it.each([
    ["by its own name", (folder: string) => join(folder, "sprig.svg")],
    ["through a link", (folder: string) => join(folder, "link.svg")],
    ["by a second name", (folder: string) => join(folder, "twin.svg")],
  ])("are no targets: %s", async (_, nameIn) => {
    const folder = tempFolder();
    const sprig = put(folder, "sprig.svg", "<svg/>");
    symlinkSync(sprig, join(folder, "link.svg"));
    linkSync(sprig, join(folder, "twin.svg"));
    const targets = await checkTargets([nameIn(folder)]);
    expect(failureOf(() => keepFiles(targets, new Map([["sprig.svg", sprig]])))).toMatchObject({
      code: "output-is-input",
      value: nameIn(folder),
    });
  });

  it("leave other files alone, and those that are not there yet", async () => {
    const folder = tempFolder();
    const files = new Map([
      ["sprig.svg", put(folder, "sprig.svg", "<svg/>")],
      ["none.svg", join(folder, "none.svg")],
    ]);
    const targets = await checkTargets([put(folder, "other.svg", "<svg/>"), join(folder, "new.svg")]);
    expect(() => keepFiles(targets, files)).not.toThrow();
  });

  it("the file that standard input comes from is no target", async () => {
    const path = put(tempFolder(), "ring.json", "{}");
    await expect(checkTargets([path], openSync(path, "r"))).rejects.toMatchObject({ code: "output-is-input" });
  });
});
