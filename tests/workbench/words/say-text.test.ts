import { readFileSync } from "node:fs";
import { afterEach, describe, expect, it } from "vitest";
import { friezeGroups } from "../../../src/base/frieze/symmetry.js";
import { RULES, type RuleName } from "../../../src/design/rules/rule-set.js";
import { alloys, cautions, checkDesign, listMotifs, ruleSets, sizeSystems } from "../../../src/index.js";
import { language } from "../../../src/workbench/words/language.js";
import { germanOf, sayText } from "../../../src/workbench/words/say-text.js";
import { fontFiles, nameOf } from "../../support/fonts.js";

afterEach(() => {
  language.value = "en";
});

/** Of some texts those without German. */
const missing = (texts: readonly string[]) => texts.filter((text) => germanOf(text) === undefined);
const numbers = (text: string) => [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([told]) => told.replace(",", ".")).sort();

describe("German", () => {
  it.each<[string, readonly string[]]>([
    ["alloys", alloys.map(({ name }) => name)],
    ["how sure their densities are", alloys.map(({ certainty }) => certainty)],
    ["size systems", sizeSystems.map(({ title }) => title)],
    ["rule sets", ruleSets.map(({ summary }) => summary)],
    ["rules", Object.values(RULES).map(({ what }) => what)],
    ["what rules leave out", Object.values(RULES).flatMap(({ without }) => (without === "" ? [] : [without]))],
    ["frieze groups", friezeGroups.map(({ summary }) => summary)],
    ["motifs", listMotifs().map(({ summary }) => summary)],
    [
      "parameters of motifs",
      listMotifs().flatMap(({ parameters }) => parameters.map(({ description }) => description)),
    ],
    ["topics of cautions", cautions.map(({ topic }) => topic)],
  ])("is there for %s", (_, texts) => {
    expect(texts.length).toBeGreaterThan(2);
    expect(missing(texts)).toEqual([]);
  });

  it("is there for whole cautions, with every number and every law that they name", () => {
    for (const { text } of cautions) {
      expect(numbers(germanOf(text) ?? "")).toEqual(numbers(text));
      expect((germanOf(text) ?? "").includes("REACH")).toBe(text.includes("REACH"));
    }
    expect(germanOf(`${cautions[0].text} And more.`)).toBeUndefined();
  });

  it("is there for what every rule's finding begins with", () => {
    const source = readFileSync(new URL("../../../src/judge/castability/judge.ts", import.meta.url), "utf8");
    const [, table = ""] = /const SUBJECTS[^{]*\{(.*?)\n\};/s.exec(source) ?? [];
    const subjects = [...table.matchAll(/"?([\w-]+)"?: "(.+)",/g)].map(([, rule, subject]) => [rule, subject] as const);
    expect(subjects.map(([rule]) => rule).sort()).toEqual(Object.keys(RULES).sort());
    const shown = { mm: "0.25 mm", "°": "12.5°", "×": "2.5 times its width", "": "2" };
    const findings = subjects.map(([rule, subject]) => {
      const { unit, keep } = RULES[rule as RuleName];
      return `${subject} ${shown[unit]}; the rule asks for ${keep} ${shown[unit]}`;
    });
    const halfSaid = findings
      .map((text) => germanOf(text) ?? text)
      .filter((text) => /\b(the|is|of|with|at)\b/.test(text));
    expect(halfSaid).toEqual([]);
  });
});

describe("what a check tells", () => {
  const square = (x: number, size: number) => `M ${x} 0 h ${size} v ${size} h ${-size} Z`;
  const document = {
    annulet: 1,
    size: { system: "iso", value: 54 },
    profile: { width: 4, thickness: 1.2, outside: { form: "flat", edge: 0.05 } },
    pattern: {
      fit: { repeats: 12, hold: "band" },
      regions: [
        { name: "a raised 1.5", path: square(0.1, 0.04), height: 0.1 },
        { name: "sunk", path: square(0.3, 0.03), mode: "sunk", depth: 0.05 },
        { name: "hole", path: square(0.6, 0.03), mode: "pierced" },
      ],
    },
    beads: [{ along: { v: 1.3 }, diameter: 0.2, pitch: 1.5 }],
    lettering: [{ text: "A", at: "bore", height: 1.2, depth: 0.6, font: nameOf("nunito") }],
  };

  it("is said in German, with its numbers and names", async () => {
    const { findings, results } = await checkDesign(document, { detail: "draft", files: fontFiles });
    expect(findings.length).toBeGreaterThan(8);
    language.value = "de";
    for (const { message } of findings) {
      const said = sayText(message);
      expect(said).toMatch(/^\p{Lu}.*; die Regel verlangt (mindestens|höchstens) .*\.$/u);
      expect(said).not.toMatch(/\b(the|is|of|with|at|under|between|deep|wide|text)\b/);
      expect(numbers(said.replaceAll("a raised 1.5", ""))).toEqual(numbers(message.replaceAll("a raised 1.5", "")));
      for (const name of ["a raised 1.5", ", of sunk"]) {
        expect(said.includes(name.replace(", of", ", bei"))).toBe(message.includes(name));
      }
    }
    expect(missing(results.map(({ what }) => what))).toEqual([]);
  });

  it("stays English on an English page, and strange texts stay as they are", () => {
    expect(sayText("Sterling silver")).toBe("Sterling silver");
    language.value = "de";
    expect(sayText("Sterling silver")).toBe("Sterlingsilber");
    expect(sayText("my own {0} silver 1.5")).toBe("my own {0} silver 1.5");
  });
});
