import { spawnSync } from "node:child_process";
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
