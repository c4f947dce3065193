// Covers: src/cli/exit.ts
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { EXIT } from "../../src/cli/exit.js";
import { exitCodeOfError, exitCodeOfSignal } from "../../src/cli/exit-codes.js";

function failure(...codes: string[]): AnnuletError {
  return new AnnuletError(codes.map((code) => ({ code, message: code })));
}

describe("exit codes", () => {
  const cases: [string, unknown, number][] = [
    ["an open mesh", failure("not-closed"), EXIT.check],
    ["relief above the rails", failure("headroom"), EXIT.check],
    ["a wrong document", failure("value-invalid"), EXIT.usage],
    ["a wrong document beside a failed check", failure("headroom", "value-invalid"), EXIT.usage],
    ["a problem nobody should bring about", failure("value-invalid", "internal"), EXIT.internal],
    ["an error that is not ours", new TypeError("x is undefined"), EXIT.internal],
    ["something thrown that is no error", "oops", EXIT.internal],
  ];
  it.each(cases)("tells %s", (_, error, code) => {
    expect(exitCodeOfError(error)).toBe(code);
  });

  // POSIX shells report a program ended by signal n as 128 + n.
  it("follows the shells for signals", () => {
    expect([exitCodeOfSignal("SIGHUP"), exitCodeOfSignal("SIGINT"), exitCodeOfSignal("SIGTERM")]).toEqual([
      129, 130, 143,
    ]);
  });
});
