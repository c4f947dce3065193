import { describe, expect, it } from "vitest";
import {
  A_NUMBER,
  BYTES,
  numberAbove0,
  numberFrom,
  type OptionRules,
  requireArgument,
  requireFields,
  requireOptions,
  SIGNAL,
  TEXT,
  wholeFrom,
  YES_OR_NO,
} from "../../src/base/options.js";
import { failureOf } from "../support/failure-of.js";

interface Options {
  readonly far?: unknown;
  readonly name?: unknown;
}

const rules: OptionRules<Options> = { far: numberFrom(1, 3, "mm"), name: { ...TEXT, needed: true } };

const problemsOf = (given: unknown) =>
  failureOf(() => requireOptions(given as Options, rules)).problems.map(({ code, path }) => [code, path]);

describe("options of tools", () => {
  it("pass where each is what belongs there", () => {
    expect(() => requireOptions({ name: "a", far: 3 }, rules)).not.toThrow();
    expect(() => requireOptions(Object.freeze({ name: "a", far: undefined, more: undefined }), rules)).not.toThrow();
  });

  it("are refused with all that is wrong", () => {
    expect(problemsOf({ far: "3", fra: 1 })).toEqual([
      ["option-invalid", "far"],
      ["option-missing", "name"],
      ["option-unknown", "fra"],
    ]);
    expect(failureOf(() => requireOptions({ nmae: "a" } as Options, rules)).problems.at(-1)?.hint).toBe(
      'did you mean "name"?',
    );
    for (const given of [null, 3, "a", []]) expect(problemsOf(given)).toEqual([["option-invalid", undefined]]);
  });

  it.each([
    [numberFrom(1, 3), [1, 2.5, 3], [0, 3.1, Number.NaN, "2", null]],
    [numberFrom(1, Number.POSITIVE_INFINITY), [1, 1e9], [0.9, Number.POSITIVE_INFINITY]],
    [numberAbove0("mm"), [1e-9], [0, Number.POSITIVE_INFINITY, "1"]],
    [wholeFrom(1, 3), [1, 3], [1.5, 0, 4, "1"]],
    [A_NUMBER, [0, -1], ["0"]],
    [YES_OR_NO, [true, false], [0, "yes"]],
    [TEXT, [""], [0, null]],
    [BYTES, [new Uint8Array(), Buffer.from("")], [new Uint16Array(), [], "a"]],
    [SIGNAL, [new AbortController().signal], [{}, null, true]],
  ])("a rule holds for what it says", (rule, good, bad) => {
    expect(good.map(rule.holds)).toEqual(good.map(() => true));
    expect(bad.map(rule.holds)).toEqual(bad.map(() => false));
  });
});

describe("arguments of tools", () => {
  it("are held to the fields that are read, and may have others", () => {
    expect(() => requireFields("tile", { name: "a", more: 1 }, rules)).not.toThrow();
    const problems = (given: unknown) =>
      failureOf(() => requireFields("tile", given, rules)).problems.map(({ code, path }) => [code, path]);
    expect(problems({ far: 9 })).toEqual([
      ["option-invalid", "tile.far"],
      ["option-missing", "tile.name"],
    ]);
    expect(problems(undefined)).toEqual([["option-missing", "tile"]]);
    for (const given of [null, 3, "a", () => 0]) expect(problems(given)).toEqual([["option-invalid", "tile"]]);
  });

  it("are told by their names", () => {
    expect(() => requireArgument("frames", 3, wholeFrom(1, 3))).not.toThrow();
    expect(failureOf(() => requireArgument("frames", 4, wholeFrom(1, 3)))).toMatchObject({
      code: "option-invalid",
      path: "frames",
    });
    expect(failureOf(() => requireArgument("frames", undefined, TEXT)).code).toBe("option-missing");
  });
});
