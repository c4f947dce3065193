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
    expect(shown(12n)).toBe("12");
    expect(shown(round)).toBe("[object Object]");
    expect(shown("x".repeat(118))).toBe(JSON.stringify("x".repeat(118)));
    expect(shown("x".repeat(119))).toBe(`"${"x".repeat(119)}…`);
  });
});
