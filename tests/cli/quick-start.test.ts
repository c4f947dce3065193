import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { budgetFlag } from "../../src/cli/quick-start.js";

describe("budgetFlag", () => {
  it("is one that this version of Node takes without a word", () => {
    const flag = budgetFlag(process.versions.v8);
    const args = flag === undefined ? [] : [flag];
    const { status, stdout, stderr } = spawnSync(process.execPath, [...args, "-e", ""], { encoding: "utf8" });
    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: "", stderr: "" });
  });

  it("is left out for versions of V8 that may not have it", () => {
    expect(budgetFlag("11.3.244.8-node.33")).toMatch(/^--interrupt-budget=\d+$/);
    expect(["10.2.154.26-node.36", "14.0.1", "", "x"].map(budgetFlag)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("the program's first module", () => {
  it("loads nothing before the settings but what loads nothing itself", () => {
    const importsOf = (name: string) => {
      const source = readFileSync(new URL(name, new URL("../../src/cli/", import.meta.url)), "utf8");
      return [...source.matchAll(/^import .*"(.+)";$/gm)].map(([, from]) => from);
    };
    const own = importsOf("main.ts");
    expect(own).toContain("./quick-start.js");
    for (const from of own) {
      const others = importsOf(from.replace(/\.js$/, ".ts"));
      expect(
        others.filter((other) => !other.startsWith("node:")),
        from,
      ).toEqual([]);
    }
  });
});
