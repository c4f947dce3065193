// Covers: src/base/errors/plain-error.ts, src/base/errors/problem.ts, src/base/errors/safe-text.ts
import { describe, expect, it } from "vitest";
import { AnnuletError, describeProblem } from "../../src/base/errors.js";

describe("an error", () => {
  const first = {
    code: "too-wide",
    message: "it is too wide",
    path: "profile.width",
    value: 0,
    allowed: "1 to 60",
    hint: "less",
  };
  const second = { code: "too-thin", message: "it is too thin" };

  it("repeats the first problem's fields, keeps all, and says all of them", () => {
    const error = new AnnuletError([first, second]);
    expect(error).toMatchObject({ ...first, message: `${describeProblem(first)}\n${describeProblem(second)}` });
    expect(error.problems).toEqual([first, second]);
    expect(error.warnings).toEqual([]);
    expect(error.name).toBe("AnnuletError");
    expect(error).toBeInstanceOf(Error);
  });

  it("carries what was noticed before it, and its cause", () => {
    const cause = new Error("below");
    const error = new AnnuletError(first, { cause, warnings: [second] });
    expect(error.warnings).toEqual([second]);
    expect(error.cause).toBe(cause);
  });
});

describe("an error as plain data", () => {
  const problems = [
    { code: "too-wide", message: "it is too wide", path: "profile.width", value: { w: [1, null, "x"] }, allowed: "1" },
    { code: "too-thin", message: "it is too thin", line: 3, column: 4 },
  ];
  const warnings = [{ code: "odd", message: "it is odd" }];
  const error = new AnnuletError(problems, { warnings, cause: new RangeError("below") });

  it.each<[string, (data: AnnuletError) => unknown]>([
    ["JSON", (data) => JSON.parse(JSON.stringify(data))],
    ["structuredClone", (data) => structuredClone(data.toJSON())],
  ])("comes through %s whole", (_, carry) => {
    const again = AnnuletError.from(carry(error));
    expect(again).toBeInstanceOf(AnnuletError);
    expect(again).toMatchObject({ code: "too-wide", path: "profile.width", allowed: "1", message: error.message });
    expect(again.problems).toEqual(problems);
    expect(again.warnings).toEqual(warnings);
    expect(again.cause).toMatchObject({ name: "RangeError", message: "below" });
    expect(again.toJSON()).toEqual(error.toJSON());
  });

  it("has text for values that JSON has no word for, and cuts long ones", () => {
    const values = [Number.NaN, 1n, () => 1, Symbol("s"), new Uint8Array(9e6), "x".repeat(5000), { at: [Infinity] }];
    const plain = values.map(
      (value) => new AnnuletError({ code: "c", message: "m", value }).toJSON().problems[0].value,
    );
    expect(plain.slice(0, 5)).toEqual(["NaN", "1", "a function", "Symbol(s)", "[object Uint8Array] of 9000000 bytes"]);
    expect(String(plain[5])).toHaveLength(2000);
    expect(plain[6]).toEqual({ at: ["Infinity"] });
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    expect(new AnnuletError({ code: "c", message: "m", value: proxy }).toJSON().problems).toHaveLength(1);
  });

  it("is made of whatever was thrown", () => {
    expect(AnnuletError.from(error)).toBe(error);
    const cause = new TypeError("no");
    expect(AnnuletError.from(cause)).toMatchObject({ code: "internal", message: "TypeError: no", cause });
    for (const thrown of [undefined, null, "no", 3, { name: "AnnuletError", message: "m", problems: [] }]) {
      expect(AnnuletError.from(thrown)).toMatchObject({ code: "internal", cause: thrown });
    }
  });
});

describe("a problem in words", () => {
  it("has its place, value, what is allowed and the remedy, each on a line of its own", () => {
    expect(
      describeProblem({ code: "c", message: "m", path: "p", line: 3, column: 7, value: 0, allowed: "a", hint: "h" }),
    ).toBe("p, line 3, column 7: m\n  value:   0\n  allowed: a\n  mend it: h");
  });

  it("leaves out what is not known, but neither 0 nor false nor null", () => {
    expect(describeProblem({ code: "c", message: "m" })).toBe("m");
    expect(describeProblem({ code: "c", message: "m", value: false })).toBe("m\n  value:   false");
    expect(describeProblem({ code: "c", message: "m", value: null })).toBe("m\n  value:   null");
  });

  it("shows values that JSON has no text for, and cuts long ones", () => {
    const round: { self?: unknown } = {};
    round.self = round;
    const shown = (value: unknown) => describeProblem({ code: "c", message: "m", value }).split("value:   ")[1];
    expect(shown(Number.NaN)).toBe("NaN");
    expect(shown(Number.POSITIVE_INFINITY)).toBe("Infinity");
    expect(shown(12n)).toBe('"12"');
    expect(shown(round)).toBe('"[object Object]"');
    expect(shown("x".repeat(118))).toBe(JSON.stringify("x".repeat(118)));
    expect(shown("x".repeat(119))).toBe(`"${"x".repeat(119)}…`);
  });
});
