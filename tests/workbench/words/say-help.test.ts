// Covers: src/workbench/words/german-help.ts, src/workbench/words/help/*
import { afterEach, describe, expect, it } from "vitest";
import { referenceSchema } from "../../../src/design/json-schema.js";
import { designJsonSchema, explainField } from "../../../src/index.js";
import { germanHelp } from "../../../src/workbench/words/german-help.js";
import { language } from "../../../src/workbench/words/language.js";
import { germanHelpOf, helpKey, sayHelp } from "../../../src/workbench/words/say-help.js";

afterEach(() => {
  language.value = "en";
});

/** All descriptions of a schema but those of constants, which the page never shows. */
function descriptionsIn(part: unknown, found = new Set<string>()): Set<string> {
  if (typeof part !== "object" || part === null) return found;
  for (const [key, value] of Object.entries(part)) {
    if (key === "description" && typeof value === "string") found.add(value);
    else descriptionsIn(value, found);
  }
  return found;
}

describe("German for the schema", () => {
  const described = [...descriptionsIn(referenceSchema()), ...descriptionsIn(designJsonSchema())].filter(
    (text) => !text.startsWith('always "'),
  );

  it("is there for every description, whole or terse", () => {
    expect(described.length).toBeGreaterThan(600);
    expect(described.filter((text) => germanHelpOf(text) === undefined)).toEqual([]);
  });

  it("holds nothing that the schema says no more", () => {
    const keys = new Set(described.map(helpKey));
    expect(Object.keys(germanHelp).filter((key) => !keys.has(key))).toEqual([]);
  });

  it("tells the numbers of the English", () => {
    const numbers = (text: string) =>
      [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([told]) => told.replace(",", ".")).sort();
    const others = Object.entries(germanHelp).filter(
      ([english, german]) => `${numbers(english)}` !== `${numbers(german)}`,
    );
    expect(others).toEqual([]);
  });
});

describe("help for a field", () => {
  it("is said in the page's language", () => {
    const [{ description = "" }] = explainField("profile.outside.channel.rail");
    expect(sayHelp(description)).toBe(description);
    language.value = "de";
    expect(sayHelp(description)).toBe("Breite jedes Randstegs, mm, unter der halben Ringbreite");
    expect(sayHelp("of tomorrow, mm, 0 to 5")).toBe("of tomorrow, mm, 0 to 5");
    expect(sayHelp("constructor")).toBe("constructor");
  });

  it.each([
    ["gap, mm, 0 to 20; default 0.3", "gap, mm"],
    ["Width, mm, above 0 and at most 1000; of a band, at the top; no default.", "Width, mm; of a band, at the top"],
    ["A step. Default: none.", "A step"],
    ["points, an even number, 4 to 8; default 8", "points"],
    ["degrees, 0 (lying) to 90", "degrees, 0 (lying) to 90"],
    ["x 0 to 1 along the band", "x 0 to 1 along the band"],
    ["", ""],
  ])("%j has the key %j", (description, key) => {
    expect(helpKey(description)).toBe(key);
  });
});
