// Covers: src/workbench/fields/control-props.ts, src/workbench/fields/use-fields.ts, src/workbench/fields/say-unit.ts, src/workbench/text/text-asked.ts
import { afterEach, expect, it } from "vitest";
import { idOf } from "../../../src/workbench/fields/control-props.js";
import { sayUnit } from "../../../src/workbench/fields/say-unit.js";
import { bookOf } from "../../../src/workbench/fields/use-fields.js";
import type { Bench } from "../../../src/workbench/state/bench.js";
import { leadToText, textAsked } from "../../../src/workbench/text/text-asked.js";
import { language } from "../../../src/workbench/words/language.js";

afterEach(() => {
  language.value = "en";
});

it("gives each control an id that a page may have", () => {
  expect(idOf(["pattern", "regions", 2, "height"])).toBe("field-pattern-regions-2--height");
  expect(idOf(["pattern", "shapes", 'a "b"'])).toMatch(/^[\w-]+$/);
});

it("says units in the page's language", () => {
  expect([sayUnit("mm"), sayUnit("degrees")]).toEqual(["mm", "°"]);
  language.value = "de";
  expect([sayUnit("mm"), sayUnit("degrees")]).toEqual(["mm", "Grad"]);
});

it("has one book for a bench", () => {
  const bench = {} as Bench;
  expect(bookOf(bench)).toBe(bookOf(bench));
  expect(bookOf({} as Bench)).not.toBe(bookOf(bench));
});

it("leads to the same place of the text as often as it is asked", () => {
  leadToText(["size"]);
  const first = textAsked.value;
  leadToText(["size"]);
  expect(textAsked.value).toEqual({ path: ["size"] });
  expect(textAsked.value).not.toBe(first);
});
