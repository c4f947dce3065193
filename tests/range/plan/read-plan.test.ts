// Covers: src/range/plan/*
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { planJsonSchema } from "../../../src/range/plan/plan-json-schema.js";
import { readPlan } from "../../../src/range/plan/read-plan.js";
import { failureOf } from "../../support/failure-of.js";

const PLAN = { range: 1, base: "heron.json", vary: [{ material: ["ag925"] }] };

describe("a plan", () => {
  it("has its defaults filled in", () => {
    expect(readPlan(PLAN)).toEqual({
      ...PLAN,
      together: "grid",
      leaveOut: [],
      outputs: ["stl", "report", "picture"],
      piece: "master",
      pictureWidth: 480,
    });
  });

  it("tells all that is wrong at once, with line and column where it is text", () => {
    const { problems } = failureOf(() =>
      readPlan('{"range": 2, "base": "a",\n "vary": [{"sice": 1}], "outputs": ["stll"]}'),
    );
    expect(problems.map(({ path, line }) => [path, line])).toEqual([
      ["range", 1],
      ["vary[0].sice", 2],
      ["outputs[0]", 2],
    ]);
    expect(problems[2].hint).toBe('did you mean "stl"?');
  });

  it.each([
    ["a list", []],
    ["broken text", "{"],
    ["no axis", { ...PLAN, vary: [] }],
    ["values and a span at once", { ...PLAN, vary: [{ path: "profile.width", values: [1], from: 1, to: 2, step: 1 }] }],
    ["a step that leads nowhere", { ...PLAN, vary: [{ path: "profile.width", from: 1, to: 2, step: 0 }] }],
    ["a filter both ways", { ...PLAN, leaveOut: [{ figure: "stretch", above: 1, below: 2 }] }],
    ["a formula", { ...PLAN, leaveOut: [{ figure: "stretch * 2", above: 1 }] }],
    ["a thousand axes", { ...PLAN, vary: Array.from({ length: 1000 }, () => ({ material: ["ag925"] })) }],
    ["what holds itself", Object.assign([], [[]]).map((_, __, all: unknown[]) => Object.assign(all, [all]))[0]],
  ])("refuses %s", (_, plan) => {
    expect(failureOf(() => readPlan(plan)).problems.length).toBeGreaterThan(0);
  });

  it("has a JSON Schema that takes and refuses the same", () => {
    const isPlan = new Ajv2020({ strict: false }).compile(planJsonSchema());
    expect(isPlan(PLAN), JSON.stringify(isPlan.errors)).toBe(true);
    expect(isPlan({ ...PLAN, vary: [{ sice: 1 }] })).toBe(false);
    expect(isPlan({ ...PLAN, outputs: ["stll"] })).toBe(false);
  });
});
