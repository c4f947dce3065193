// Covers: src/cli/range/*
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { paceOf } from "../../../src/cli/range/tell-range.js";
import { makeRange } from "../../../src/range/disk/make-range.js";
import { makeVariants } from "../../../src/range/disk/make-variant.js";
import { annulet, PLAIN, put, tempFolder } from "../support.js";

const BASE = { ...PLAIN, name: "Heron", tolerance: 0.2 };
const PLAN = {
  range: 1,
  base: "heron.json",
  vary: [{ path: "profile.width", values: [4, 5, 60] }],
  leaveOut: [{ figure: "bandWidth", above: 50 }],
  outputs: ["stl"],
};

function putPlan(plan: object = PLAN) {
  const folder = tempFolder();
  put(folder, "heron.json", BASE);
  return { path: put(folder, "plan.json", plan), folder, out: join(folder, "out") };
}

/** Makes the range in this process, as there is no program for others in the sources. */
async function made(plan: object = PLAN) {
  const put = putPlan(plan);
  const makers = { make: makeVariants, end: async () => {} };
  const range = makeRange(plan, { folder: put.out, planFolder: put.folder, makers, jobs: 1 });
  while ((await range.next()).done !== true);
  return put;
}

describe("annulet range", () => {
  it("prints the variants of a plan, and makes nothing", async () => {
    const { path } = putPlan();
    const { code, out, err } = await annulet(["range", path, "--plan-only"]);
    expect(code).toBe(0);
    expect(out).toMatch(/Heron-4 +4 +– +– +– +4\.000 +\d\.\d\d\n/);
    expect(out).toMatch(/Heron-60 .* left out: bandWidth 60 is above 50/);
    expect(err).toMatch(/3 variants: 2 to make, 1 \(33\.3 %\) left out/);
    const lines = (await annulet(["range", path, "--plan-only", "--json"])).out.trim().split("\n");
    expect(lines.map((line) => JSON.parse(line).kind)).toEqual(["planned", "planned", "left-out"]);
  });

  it("ends with 1 where a variant is no design", async () => {
    const { path } = putPlan({ ...PLAN, vary: [{ path: "profile.width", values: [4, -1] }] });
    const { code, err } = await annulet(["range", path, "--plan-only"]);
    expect([code, err]).toEqual([1, expect.stringContaining("1 (50.0 %) at fault")]);
  });

  it("says once more what is there, and its digest", async () => {
    const { path, out: folder } = await made();
    const { code, out, err } = await annulet(["range", path, "-o", folder]);
    const { sha256 } = JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8"));
    expect(code).toBe(0);
    expect(out).toBe(`manifest: 2 variants, 2 files, SHA-256 ${sha256}\n`);
    expect(err).toContain("0 made, 2 kept as they were, 1 left out, 0 failed");
    const lines = (await annulet(["range", path, "-o", folder, "--json"])).out.trim().split("\n");
    expect(lines.map((line) => JSON.parse(line).kind)).toEqual(["kept", "kept", "left-out", undefined]);
    expect(JSON.parse(lines[3])).toEqual({ manifest: sha256, files: 2, failed: 0 });
  });

  it("verifies a folder, and ends with 1 where a file has changed", async () => {
    const { path, out: folder } = await made();
    expect(await annulet(["range", path, "-o", folder, "--verify"])).toMatchObject({ code: 0, err: "" });
    writeFileSync(join(folder, "rings/Heron-4.stl"), "");
    const { code, out } = await annulet(["range", path, "-o", folder, "--verify"]);
    expect([code, out.split("\n")[0]]).toEqual([1, "changed: rings/Heron-4.stl"]);
    const { deviations } = JSON.parse((await annulet(["range", path, "-o", folder, "--verify", "--json"])).out);
    expect(deviations).toEqual([{ path: "rings/Heron-4.stl", what: "changed" }]);
  });

  it.each([
    [["--plan-only", "--verify"], "one at a time"],
    [["--jobs", "0"], "--jobs is a number"],
    [["--max-memory", "-1"], "--max-memory is a number"],
    [[], "There is no folder"],
    [["-o", "out", "--part", "4/3"], "is no part of a range"],
    [["-o", "out", "--merge"], "There is no manifest"],
  ])("refuses %j", async (words, message) => {
    const { path } = putPlan();
    const { code, err } = await annulet(["range", path, ...words]);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });

  it("tells the count of a plan that explodes", async () => {
    const thousand = (key: string) => ({ path: `profile.${key}`, from: 1, to: 1000, step: 1 });
    const { path } = putPlan({ ...PLAN, vary: ["width", "thickness", "rise"].map(thousand) });
    const { code, err } = await annulet(["range", path, "--plan-only"]);
    expect([code, err]).toEqual([2, expect.stringContaining("the plan comes to 1000000000 variants")]);
  });

  it("prints the schema of plans", async () => {
    const { out } = await annulet(["schema", "plan"]);
    expect(JSON.parse(out)).toMatchObject({ title: "annulet plan of a range", properties: { range: { const: 1 } } });
  });
});

it.each([
  [{ made: 0, kept: 3, failed: 0 }, "3 of 10"],
  [{ made: 2, kept: 0, failed: 0 }, "2 of 10, 6.00 a minute, 80 s left"],
  [{ made: 1, kept: 4, failed: 1 }, "6 of 10, 6.00 a minute, 40 s left"],
])("%j after 20 s is told as %s", (counts, text) => {
  expect(paceOf({ ...counts, "left-out": 0 }, 10, 20)).toBe(text);
});
