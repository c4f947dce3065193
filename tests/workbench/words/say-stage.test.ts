import { afterEach, expect, test } from "vitest";
import { PHASES } from "../../../src/base/phases.js";
import { language } from "../../../src/workbench/words/language.js";
import { sayStage } from "../../../src/workbench/words/say-stage.js";

afterEach(() => {
  language.value = "en";
});

test("every part of the work has words in both languages", () => {
  for (const tag of ["en", "de"] as const) {
    language.value = tag;
    const words = [...Object.keys(PHASES), "done"].map((phase) => sayStage(phase));
    expect(new Set(words).size).toBe(words.length);
    for (const word of words) expect(word).toMatch(/ /);
  }
});

test("a part that is none goes by its name", () => {
  expect(sayStage("constructor")).toBe("constructor");
});
