import { describe, expect, it } from "vitest";
import { wrapLines } from "../../src/cli/wrap-lines.js";

const words = (...lengths: number[]) => lengths.map((length) => "x".repeat(length)).join(" ");

describe("text in lines", () => {
  it("is broken where a line would be longer than 76 characters, its indent among them", () => {
    // 2 + 36 + 1 + 37 = 76.
    expect(wrapLines(words(36, 37, 1))).toBe(`  ${words(36, 37)}\n  x`);
    expect(wrapLines(words(36, 38))).toBe(`  ${words(36)}\n  ${words(38)}`);
    expect(wrapLines(words(38, 37), "")).toBe(words(38, 37));
  });

  it("keeps every word, in order, however long", () => {
    const text = words(3, 100, 1, 90, 20, 20, 20, 20);
    const lines = wrapLines(text, "- ").split("\n");
    expect(lines.map((line) => line.slice(2)).join(" ")).toBe(text);
    for (const line of lines) if (line.includes(" ", 2)) expect(line.length).toBeLessThanOrEqual(76);
    expect(lines).toContain(`- ${words(100)}`);
  });

  it("of one word or none is one line", () => {
    expect(wrapLines("word")).toBe("  word");
    expect(wrapLines("")).toBe("  ");
  });
});
