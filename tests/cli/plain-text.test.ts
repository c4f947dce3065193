// Covers: src/cli/io.ts
import { stripVTControlCharacters, styleText } from "node:util";
import { describe, expect, it } from "vitest";
import { plainJson, plainText } from "../../src/cli/plain-text.js";
import { tint } from "../../src/cli/tint.js";
import { annulet, PLAIN } from "./support.js";

/** Colours text as the program does; clears the screen, sets the window's title, hides text, goes back a line: C0 and C1 forms; then text turned round. */
const HOSTILE = "\x1b[31m\x1b[2J\x1b]0;mine\x07\x1b[8mhidden\x9b1A\x00\r\x7f\u202egnir";

describe("text for a terminal", () => {
  it("has no control character but line feeds and tabs", () => {
    expect(plainText(`a\tb\n${HOSTILE}`)).toBe("a\tb\n�[31m�[2J�]0;mine��[8mhidden�1A����gnir");
  });

  it.each(["red", "yellow", "green", "bold", "dim"] as const)("keeps the tone %s", (tone) => {
    const terminal = Object.assign(process.stdout, {});
    const io = { stdin: process.stdin, stdout: terminal, stderr: terminal, env: {} };
    const tinted = tint(io, Object.create(terminal, { isTTY: { value: true } }), tone, "word");
    expect(tinted).not.toBe("word");
    expect(plainText(tinted)).toBe(styleText(tone, "word", { validateStream: false }));
    expect(stripVTControlCharacters(plainText(tinted))).toBe("word");
  });

  it("means the same as JSON", () => {
    const text = plainJson({ name: HOSTILE });
    expect(text).toMatch(/^[\n\x20-\x7e]*$/);
    expect(JSON.parse(text)).toEqual({ name: HOSTILE });
  });

  it.each([
    [["make", "-", "-q", "--json"]],
    [["weigh", "-"]],
    [["check", "-"]],
    [["make", "-", "-o", `${HOSTILE}.xyz`]],
  ])("%j prints a hostile name on neither stream", async (words) => {
    const { out, err } = await annulet(words, { stdin: JSON.stringify({ ...PLAIN, name: HOSTILE, [HOSTILE]: 1 }) });
    expect(`${out}${err}`).toMatch(/mine/);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(`${out}${err}`).not.toMatch(/[\0-\x08\x0b-\x1f\x7f-\x9f\u202e]/);
  });
});
