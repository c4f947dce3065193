// Covers: src/cli/commands/complete.ts
import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { commands } from "../../src/cli/commands/catalogue.js";
import { annulet } from "./support.js";

/** What may stand in place of the last word, and how the shell goes on. */
async function asked(...words: readonly string[]): Promise<{ found: string[]; end: string | undefined }> {
  const { out } = await annulet(["complete", "--", ...words]);
  const lines = out.trimEnd().split("\n");
  const end = lines.pop();
  return { found: lines.map((line) => line.split("\t")[0]), end };
}

/** The shell completes files itself; it does not. */
const FILES = ":0";
const NONE = ":4";

describe("completing a command line", () => {
  it("offers every command, and those that begin so", async () => {
    expect((await asked("")).found).toEqual(commands.map(({ name }) => name));
    expect(await asked("ma")).toEqual({ found: ["make"], end: NONE });
    expect(await asked("zz")).toEqual({ found: [], end: NONE });
  });

  it("offers a command's options, and the values of those that have a choice", async () => {
    expect((await asked("make", "--pi")).found).toEqual(["--piece"]);
    expect((await asked("make", "ring.json", "--piece", "")).found).toEqual(["master", "cast", "finished"]);
    expect((await asked("make", "ring.json", "--piece", "fi")).found).toEqual(["finished"]);
  });

  it("leaves files to the shell", async () => {
    for (const words of [
      ["make", ""],
      ["make", "ri"],
      ["make", "ring.json", "-o", ""],
      ["make", "--draft", ""],
    ]) {
      expect(await asked(...words)).toEqual({ found: [], end: FILES });
    }
  });

  it("is a script that the shell reads without complaint", async () => {
    for (const shell of ["bash", "zsh", "fish"]) {
      const { code, out } = await annulet(["complete", shell]);
      expect(code).toBe(0);
      expect(out).toContain("annulet complete --");
      const read = spawnSync(shell, ["-n"], { input: out, encoding: "utf8" });
      if (read.error === undefined)
        expect({ shell, status: read.status, err: read.stderr }).toEqual({ shell, status: 0, err: "" });
      else expect(shell).not.toBe("bash");
    }
  });

  it("knows no other shell", async () => {
    const { code, err } = await annulet(["complete", "tcsh"]);
    expect(code).toBe(2);
    expect(err).toContain("bash, zsh, fish");
  });
});
