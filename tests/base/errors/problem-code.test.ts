/**
 * The type of codes: made of the sources, so that editors complete it.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { AnnuletError, type ProblemCode } from "annulet";
import { describe, expect, it } from "vitest";
import { codesIn, errorCodes, errorCodesText } from "../../../tools/error-codes.mjs";

const ROOT = fileURLToPath(new URL("../../../", import.meta.url));

describe("codes of problems", () => {
  it("are all those in the sources: npm run reference", () => {
    expect(readFileSync(`${ROOT}src/base/errors/problem-code.ts`, "utf8")).toBe(errorCodesText(ROOT));
  });

  it("hold those that are put together and those of tables", () => {
    const codes = errorCodes(ROOT);
    const some: ProblemCode[] = ["too-long", "svg-file-missing", "bevel-too-large", "option-unknown", "rail-too-wide"];
    expect(codes).toEqual(expect.arrayContaining(some));
    expect(codes).not.toContain("custom");
    expect(new Set(codes).size).toBe(codes.length);
  });

  it("are found in objects, choices, tables and as arguments", () => {
    const text = `
      const a = { code: "one" };
      const b = { code: raised ? "two" : "three" };
      const CODES = { x: "four" } as const;
      throw new Misfit("five", "no code");
      outputError("six");
      const none = { other: "seven", code: found };`;
    expect(codesIn("a.ts", text)).toEqual(["one", "two", "three", "four", "five", "six"]);
  });

  it("leave room for codes of one's own", () => {
    expect(new AnnuletError({ code: "mine", message: "own" }).code).toBe("mine");
  });
});
