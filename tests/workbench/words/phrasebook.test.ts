import { describe, expect, it } from "vitest";
import { openPhrasebook, withComma } from "../../../src/workbench/words/phrasebook.js";

const say = openPhrasebook({
  "the end": "das Ende",
  "{0#} to {1#}": "{0} bis {1}",
  "{0} crosses {1} at {2#}": "Bei {2} kreuzt {1} {0}.",
  "{0} crosses itself at {1#}": "{0} kreuzt sich bei {1}.",
  "it ends: {0}": "es endet: {0}",
  north: "Norden",
  "north of {0=}": "nördlich von {0}",
  "{0!} or {1!}": "{0} oder {1}",
  'set {"aspect": {0#}}': '{"aspect": {0}} setzen',
});

describe("a phrasebook", () => {
  it.each([
    ["a whole sentence", "the end", "das Ende"],
    ["numbers, with a decimal comma", "0.5 mm to 1.25 mm", "0,5 mm bis 1,25 mm"],
    ["blanks in another order", "vine crosses stem at 3.5", "Bei 3,5 kreuzt stem vine."],
    ["the phrase with most fixed words", "vine crosses itself at 3.5", "vine kreuzt sich bei 3,5."],
    ["names of one word as they are", "north of north", "nördlich von north"],
    ["other fillings of names", "north of the end", "nördlich von das Ende"],
    ["phrases inside phrases", "it ends: 1.5 to 2", "es endet: 1,5 bis 2"],
    ["choices of what it knows", 'the end or "half" or 1.5 mm', 'das Ende oder "half" oder 1,5 mm'],
    ["braces that are no blanks", 'set {"aspect": 0.5}', '{"aspect": 0,5} setzen'],
  ])("says %s", (_, text, said) => {
    expect(say(text)).toBe(said);
  });

  it("puts names in as they are, whatever they hold", () => {
    expect(say("{1} crosses {0} at 2.5")).toBe("Bei 2,5 kreuzt {0} {1}.");
    expect(say("$& crosses $1 at 2.5")).toBe("Bei 2,5 kreuzt $1 $&.");
    expect(say("leaf 1.5 crosses leaf 2.5 at 3.5")).toBe("Bei 3,5 kreuzt leaf 2.5 leaf 1.5.");
  });

  it.each([
    ["another text", "the End"],
    ["words where numbers belong", "north to south"],
    ["a choice of what it does not know", "the end or the start"],
    ["an empty blank", " crosses vine at 2"],
    ["the same fixed words in another order", "at 2 crosses vine"],
    ["fixed parts that would overlap", "it ends:"],
    ["a text too long to look at", `it ends: ${"x".repeat(5000)}`],
    ["nothing", ""],
  ])("has no word for %s", (_, text) => {
    expect(say(text)).toBeUndefined();
  });

  it("gives up on phrases inside phrases in the end", () => {
    expect(say(`${"it ends: ".repeat(400)}the end`)).toMatch(/^(es endet: ){6}it ends/);
  });
});

describe("a decimal comma", () => {
  it.each([
    ["0.35 mm", "0,35 mm"],
    ["±1.5", "±1,5"],
    ["12.5 %", "12,5 %"],
    ["4.25, 8", "4,25, 8"],
    ["leaf-1.5.svg", "leaf-1.5.svg"],
    ['"1.5"', '"1.5"'],
    ["u 1.5", "u 1.5"],
    ["...", "..."],
  ])("in %s", (text, said) => {
    expect(withComma(text)).toBe(said);
  });
});
