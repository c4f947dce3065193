/** Numbers among letters from right to left, against the levels that UAX #9 gives by hand. */
import { describe, expect, it } from "vitest";
import { runsFromLeft } from "../../../src/art/text/number-runs.js";
import { setText } from "../../../src/art/text/set-text.js";
import { typefaceOf } from "../../support/fonts.js";

/** As it stands from left to right: letters one by one, numbers whole. */
function seen(text: string): string {
  return runsFromLeft(text)
    .map((run) => (run.direction === "rtl" ? [...run.text].reverse().join("") : run.text))
    .join("");
}

describe("the order in which a text is seen", () => {
  it.each<[string, string, string]>([
    ["a number behind a word", "אב 12", "12 בא"],
    ["a number before a word", "12 אב", "בא 12"],
    ["a date, whose stops are separators", "א 14.6.2026 ב", "ב 14.6.2026 א"],
    ["a dash between numbers in Hebrew is theirs", "א 12-15 ב", "ב 12-15 א"],
    ["a dash between numbers behind an Arabic letter is none (W2, W4)", "ا 12-15", "15-12 ا"],
    ["but it is before the first one", "12-15 ا", "ا 12-15"],
    ["a stop between numbers behind an Arabic letter is theirs", "ا 1.5", "1.5 ا"],
    ["Arabic digits", "ا ١٤/٦ ب", "ب ١٤/٦ ا"],
    ["Arabic digits with a dash", "١٢-١٥ ا", "ا ١٥-١٢"],
    ["Persian digits are European ones", "א ۱۲-۱۵", "۱۲-۱۵ א"],
    ["two numbers apart", "א 12 15", "15 12 א"],
    ["a mark of a number", "א 12% ב", "ב 12% א"],
    ["a mark before a number, and one alone", "א $12 $ ב", "ב $ $12 א"],
    ["a stop at the end of a text", "א 12.", ".12 א"],
    ["two stops are none", "א 1..2", "2..1 א"],
    ["no number", "אב", "בא"],
  ])("%s", (_, text, expected) => {
    expect(seen(text)).toBe(expected);
  });

  it("tells where each run begins, whatever letters take", () => {
    expect(runsFromLeft("א\u05b8 12\u{10900}")).toEqual([
      { text: "\u{10900}", start: 5, direction: "rtl" },
      { text: "12", start: 3, direction: "ltr" },
      { text: "א\u05b8 ", start: 0, direction: "rtl" },
    ]);
  });
});

describe("a set text with a number", () => {
  it.each(["hebrew", "amiri"] as const)("has its digits from left to right behind the word, in %s", async (font) => {
    const typeface = await typefaceOf(font);
    const options = { height: 2, where: "text" };
    const word = font === "hebrew" ? "אבג" : "نور";
    const line = setText(typeface, `${word} 147`, options);
    expect(line.glyphs.slice(0, 3).map(({ characters }) => characters)).toEqual(["1", "4", "7"]);
    const lefts = line.glyphs.map(({ origin }) => origin[0]);
    expect([...lefts].sort((a, b) => a - b)).toEqual(lefts);
    const alone = setText(typeface, word, options);
    expect(line.glyphs.slice(3).map(({ outline }) => outline)).toEqual(alone.glyphs.map(({ outline }) => outline));
  });
});
