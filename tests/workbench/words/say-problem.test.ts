// Covers: src/workbench/words/german-problems.ts, src/workbench/words/german-phrases.ts, src/workbench/words/problems/*, src/workbench/words/phrases/*
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Problem, readDesign } from "../../../src/index.js";
import { germanPhrases } from "../../../src/workbench/words/german-phrases.js";
import { germanProblems } from "../../../src/workbench/words/german-problems.js";
import { language } from "../../../src/workbench/words/language.js";
import { openPhrasebook } from "../../../src/workbench/words/phrasebook.js";
import { sayProblem } from "../../../src/workbench/words/say-problem.js";
import { failureOf } from "../../support/failure-of.js";
import { spokenTexts, textsIn } from "../../support/spoken-texts.js";

beforeEach(() => {
  language.value = "de";
});
afterEach(() => {
  language.value = "en";
});

const SOURCES = new URL("../../../src/", import.meta.url);

/** Texts that are put together of others alone, or of values, and one whose parts stand in phrases of their own. */
const PUT_TOGETHER = ["1", "[0]", "{0}", "{0} {1}", "{0} ({1})", "{0}{1}", "{0}: {1}", "{0}, …"];
const IN_PARTS = [
  "the ring has {0} handles where the design implies {1}: parts bridge a gap{2}, which traps investment",
];

/** Choices that depend on each other, so that these are never said. */
const NEVER_SAID = [
  "{0} part of the ring touch nothing: beads or relief hang over a pit or a hole, or beside the band{1}",
  "{0} parts of the ring touches nothing: beads or relief hang over a pit or a hole, or beside the band{1}",
];

describe("German", () => {
  it("is there for every text of the sources but those of the command line, of ranges and of mesh files, which the page does not read", () => {
    const say = openPhrasebook(germanPhrases);
    const texts = spokenTexts(SOURCES, ["cli", "workbench", "output/files/", "range/"]);
    expect(texts.length).toBeGreaterThan(800);
    // What is but names of fields is written alike.
    const isSaid = (text: string) => !/^\{[a-z, ]+\}$/.test(text);
    const missing = texts.filter(isSaid).filter((text) => say(text.replaceAll(/\{(\d)\}/g, "$11.5")) === undefined);
    expect(missing).toEqual([...PUT_TOGETHER, ...IN_PARTS, ...NEVER_SAID].sort());
  });

  it("tells every number and every blank of the English", () => {
    const blanks = (text: string) =>
      [...new Set([...text.matchAll(/\{(\d)[#!=]?\}/g)].map(([, blank]) => blank))].sort();
    const numbers = (text: string) =>
      [...text.replaceAll(/\{\d[#!=]?\}/g, "").matchAll(/\d+(?:[.,]\d+)?/g)]
        .map(([told]) => told.replace(",", "."))
        .sort();
    const told = (text: string) => [blanks(text), numbers(text)].join("; ");
    const others = Object.entries(germanPhrases).filter(([english, german]) => told(english) !== told(german));
    expect(others).toEqual([]);
  });

  it("is a sentence of its own for every code", () => {
    for (const text of Object.values(germanProblems)) expect(text).toMatch(/^\p{Lu}.*\.$/u);
  });
});

describe("the finder of what sources say", () => {
  it.each([
    ["plain text", 'x({ code: "a", message: "one" })', ["one"]],
    ["what is put in", `const message = "at " + x + " of " + y;`, ["at {0} of {1}"]],
    [
      "templates",
      ["const message = `at $", "{x} and $", '{a ? "b" : y}`'].join(""),
      ["at {0} and b", "at {0} and {1}"],
    ],
    ["choices", 'x({ hint: a ? "one" : (b ? "two c" : "two d") })', ["one", "two c", "two d"]],
    ["sums", 'x({ allowed: "a " + b })', ["a {0}"]],
    ["what a misfit is handed", 'throw new Misfit("code", "why not", []);', ["why not"]],
    ["what is complained of", 'complain("edge", "is too much")', ["is too much"]],
    ["tables of remedies", 'const HINTS = { a: "do this", b: "do that" } as const;', ["do this", "do that"]],
    ["nothing else", 'x({ path: "one", value: "two" })', []],
  ])("finds %s", (_, source, texts) => {
    expect(textsIn(source)).toEqual(texts);
  });
});

const base = { annulet: 1, size: { system: "iso", value: 54 }, profile: { width: 6, thickness: 2 } };

describe("a problem", () => {
  it("of a document is said in German, with its numbers", () => {
    const document = { ...base, tolerance: 2.5, profile: { width: -1, thickness: 1.5, outside: { form: "chanel" } } };
    const { problems } = failureOf(() => readDesign(document));
    expect(problems.map(sayProblem)).toMatchObject([
      {
        text: "Der Wert darf höchstens 0,2 sein.",
        allowed: "eine Zahl von 0,001 bis 0,2",
        hint: expect.stringContaining("Facetten"),
      },
      { text: "Der Wert muss über 0 liegen.", allowed: "eine Zahl über 0, höchstens 1000" },
      {
        text: 'Erlaubt ist eines von: "flat", "domed", "channel", "bevelled", "concave", "knife", "free".',
        allowed: '"flat", "domed", "channel", "bevelled", "concave", "knife", "free"',
        hint: 'ist "channel" gemeint?',
      },
    ]);
  });

  const problem = (code: string, message: string, rest: Partial<Problem> = {}): Problem => ({ code, message, ...rest });

  it.each([
    [
      problem("beads-gap", 'beads of the run "rail 2.5" leave gaps of 12.5 % of their diameter', {
        allowed: "a ratio of at most 1.2",
        hint: "more or larger beads, or a smaller pitch",
      }),
      "Zwischen den Perlen der Reihe „rail 2.5“ klaffen Lücken von 12,5 % ihres Durchmessers.",
      "ein Verhältnis von höchstens 1,2",
      "mehr oder größere Perlen, oder eine kleinere Teilung",
    ],
    [
      problem(
        "taper-too-far",
        "at 270° the band is 1.2 mm wide and 1 mm thick, and there the rails leave no channel between them",
        {
          allowed: "at least 1.85 mm at 270°",
          hint: "taper its width less, or make outside.rail smaller all round",
        },
      ),
      "Bei 270° ist die Ringschiene 1,2 mm breit und 1 mm stark; dort gilt: Die Randstege lassen keine Nut zwischen sich.",
      "mindestens 1,85 mm bei 270°",
      "die Breite weniger verjüngen oder outside.rail rundum kleiner machen",
    ],
    [
      problem("weave-too-flat", "{0} <b>1.5</b> crosses another strand at too small an angle at u 1.500, v 0.250"),
      "{0} <b>1.5</b> kreuzt einen anderen Strang bei u 1,500, v 0,250 in einem zu flachen Winkel.",
      undefined,
      undefined,
    ],
    [
      problem("headroom", "said otherwise one day, 3 times", { allowed: "0.5 mm", hint: "as it were" }),
      "Das Relief ragt über die Randstege und würde zuerst abgenutzt.",
      "0,5 mm",
      "as it were",
    ],
    [problem("of-tomorrow", "what nobody knows yet"), "what nobody knows yet", undefined, undefined],
    [problem("constructor", "what nobody knows yet"), "what nobody knows yet", undefined, undefined],
  ])("is said in German: %o", (told, text, allowed, hint) => {
    expect(sayProblem(told)).toEqual({ text, allowed, hint });
  });

  it("stays as it is in English", () => {
    language.value = "en";
    const told = problem("headroom", "the relief stands 0.5 mm above", { allowed: "less", hint: "lower it" });
    expect(sayProblem(told)).toEqual({ text: told.message, allowed: told.allowed, hint: told.hint });
  });
});
