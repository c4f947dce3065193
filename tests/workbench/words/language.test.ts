// Covers: src/workbench/words/english.ts, src/workbench/words/german.ts
import { afterEach, describe, expect, it } from "vitest";
import { english } from "../../../src/workbench/words/english.js";
import { german } from "../../../src/workbench/words/german.js";
import { language, preferred, say, sayNumber } from "../../../src/workbench/words/language.js";

afterEach(() => {
  language.value = "en";
});

describe("the page's words", () => {
  it("name the same values in every language", () => {
    const values = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([value]) => value).sort();
    for (const key of Object.keys(english) as (keyof typeof english)[]) {
      expect([key, values(german[key])]).toEqual([key, values(english[key])]);
    }
  });

  it("are put together in the language that is shown", () => {
    expect(say("work.working", { stage: "union", share: 40 })).toBe("working: union, 40 %");
    expect(sayNumber(1234.5, 2)).toBe("1,234.50");
    language.value = "de";
    expect(say("work.stop")).toBe("Anhalten");
    expect(sayNumber(1.5, 2)).toBe("1,50");
  });

  it("follow the reader", () => {
    expect(preferred(["fr", "de-AT", "en"])).toBe("de");
    expect(preferred(["fr"])).toBe("en");
    expect(preferred(["constructor"])).toBe("en");
  });
});
