// Covers: src/workbench/words/german-choices.ts
import { afterEach, describe, expect, it } from "vitest";
import { referenceSchema } from "../../../src/design/json-schema.js";
import { germanChoices } from "../../../src/workbench/words/german-choices.js";
import { language } from "../../../src/workbench/words/language.js";
import { sayChoice, sayStage } from "../../../src/workbench/words/say-choice.js";

afterEach(() => {
  language.value = "en";
});

/** Every field with a word that it can be chosen from, as `form.channel`. */
function choicesIn(part: unknown, field = "", found = new Set<string>()): Set<string> {
  if (typeof part !== "object" || part === null) return found;
  for (const [key, value] of Object.entries(part)) {
    if (key === "const" || key === "enum") {
      for (const word of [value].flat()) if (typeof word === "string") found.add(`${field}.${word}`);
    } else if (key === "properties" || key === "$defs") {
      for (const [name, inner] of Object.entries(value as object)) choicesIn(inner, name, found);
    } else if (key !== "default" && key !== "examples") choicesIn(value, field, found);
  }
  return found;
}

describe("words to choose from", () => {
  const choices = [...choicesIn(referenceSchema())];

  it("all have German, and there is no other", () => {
    expect(choices.length).toBeGreaterThan(120);
    const keyOf = (choice: string) => (Object.hasOwn(germanChoices, choice) ? choice : choice.replace(/^[^.]*\./, ""));
    const known = (key: string) => Object.hasOwn(germanChoices, key);
    expect(choices.filter((choice) => !known(keyOf(choice)))).toEqual([]);
    const said = new Set(choices.map(keyOf));
    expect(Object.keys(germanChoices).filter((key) => !said.has(key))).toEqual([]);
  });

  it("are told apart within a field", () => {
    language.value = "de";
    for (const field of new Set(choices.map((choice) => choice.split(".")[0]))) {
      const words = choices
        .filter((choice) => choice.startsWith(`${field}.`))
        .map((choice) => choice.slice(field.length + 1));
      const said = words.map((word) => sayChoice(field, word));
      expect([field, said.filter((one, i) => said.indexOf(one) !== i)]).toEqual([field, []]);
    }
  });

  it("are said by their field, and strange ones as they are", () => {
    expect(sayChoice("form", "channel")).toBe("channel");
    language.value = "de";
    expect(sayChoice("form", "channel")).toBe("Nut");
    expect(sayChoice("set", "brick")).toBe("reihenweise halb versetzt");
    expect(sayChoice("name", "brick")).toBe("Ziegel");
    expect(sayChoice("name", "constructor")).toBe("constructor");
  });
});

describe("phases of the work", () => {
  it("are said as a maker calls them", () => {
    expect(sayStage("wrap")).toBe("surfaces");
    language.value = "de";
    expect(sayStage("profile")).toBe("Querschnitt");
  });
});
