/**
 * What is left out in the JSON Schema: just what the keywords say, nothing that sounds like it.
 */
import { describe, expect, it } from "vitest";
import { type DescribedPart, liftFromChoices, sayKindsOnce, terseDescription } from "../../src/design/terse.js";

const shortened: [DescribedPart, string][] = [
  [{ description: "gap, mm, 0 to 20; default 0.3", minimum: 0, maximum: 20, default: 0.3 }, "gap, mm"],
  [
    { description: "grown, mm, -5 to 5; below 0 it is shrunk", minimum: -5, maximum: 5 },
    "grown, mm; below 0 it is shrunk",
  ],
  [{ description: "Width, mm, above 0 and at most 9.", exclusiveMinimum: 0, maximum: 9 }, "Width, mm"],
  [{ description: "how it ends; default cut", default: "cut" }, "how it ends"],
  [{ description: "dark is high; default false: light is", default: false }, "dark is high; default false: light is"],
  [{ description: "runs, at most 9; default none", default: [] }, "runs, at most 9"],
  [{ description: "runs, at most 9; default none", maxItems: 9 }, "runs"],
  [{ description: "edge, mm, 0 or more; it rounds", minimum: 0 }, "edge, mm; it rounds"],
  [{ description: "height, mm, above 0; no default", exclusiveMinimum: 0 }, "height, mm"],
  [{ description: "petals, an even number", multipleOf: 2 }, "petals"],
  [{ description: "Its outside." }, "Its outside"],
  [{ description: "name, 1 to 9 characters", minLength: 1, maxLength: 9 }, "name"],
];

const kept: DescribedPart[] = [
  { description: "gap, mm, 0 to 20; default 0.3", minimum: 0, maximum: 2, default: 0.31 },
  { description: "gap, mm, 0 to 20; default 0.3" },
  { description: "gap; default 0.35", default: 0.3 },
  { description: "gap; default 0x3", default: "0.3" },
  { description: "lean, degrees, 0 (upright) to 60; default 0 at rails", minimum: 0, maximum: 60, default: 0 },
  { description: "share of 10 to 20, others less", minimum: 0, maximum: 20 },
  { description: "petals, an even number", multipleOf: 3 },
  { description: "default 3", default: 3 },
  { description: "shapes; default none of these" },
];

describe("a description beside keywords", () => {
  it.each(shortened)("%o is told as %s", (part, told) => {
    expect(terseDescription(part)).toBe(told);
  });

  it.each(kept)("%o stays: it says something else", (part) => {
    expect(terseDescription(part)).toBe(part.description);
  });

  it("is not made up", () => {
    expect(terseDescription({ default: 3, minimum: 0, maximum: 5 })).toBeUndefined();
  });
});

describe("what is said of all choices", () => {
  const choice = (name: string, required: string[], type = "object") => {
    return { type, properties: { name: { const: name } }, required };
  };

  it("is said once, at any depth", () => {
    const choices = { oneOf: [choice("a", ["name"]), choice("b", ["name"])] };
    const lifted = {
      type: "object",
      required: ["name"],
      oneOf: [{ properties: { name: { const: "a" } } }, { properties: { name: { const: "b" } } }],
    };
    expect(liftFromChoices(choices)).toEqual(lifted);
    expect(liftFromChoices({ properties: { inner: { items: choices } } })).toEqual({
      properties: { inner: { items: lifted } },
    });
    expect(liftFromChoices({ $defs: { choices } })).toEqual({ $defs: { choices: lifted } });
  });

  it("is not what some of them say", () => {
    const fields = liftFromChoices({ anyOf: [choice("a", ["name"]), choice("b", ["name", "height"])] });
    expect(fields).toMatchObject({ type: "object", anyOf: [{ required: ["name"] }, { required: ["name", "height"] }] });
    expect(fields).not.toHaveProperty("required");
    const kinds = { oneOf: [choice("a", ["name"]), choice("b", ["name"], "array")] };
    expect(liftFromChoices(kinds)).toEqual(kinds);
  });

  it("does not take the place of what is said there already", () => {
    const part = { required: ["form"], oneOf: [choice("a", ["name"])] };
    expect(liftFromChoices(part)).toEqual(part);
  });

  it("is that there are no other fields, only where a constant tells the choices apart", () => {
    const closed = (name: string) => ({ ...choice(name, ["name"]), additionalProperties: false });
    expect(liftFromChoices({ oneOf: [closed("a"), closed("b")] })).toEqual({
      type: "object",
      required: ["name"],
      unevaluatedProperties: false,
      oneOf: [{ properties: { name: { const: "a" } } }, { properties: { name: { const: "b" } } }],
    });
    const open = liftFromChoices({ oneOf: [closed("a"), choice("b", ["name"])] });
    expect(open).toMatchObject({ oneOf: [{ additionalProperties: false }, {}] });
    expect(open).not.toHaveProperty("unevaluatedProperties");
    const untold = { type: "object", properties: { size: {} }, required: ["size"], additionalProperties: false };
    expect(liftFromChoices({ anyOf: [untold, closed("a")] })).toMatchObject({
      anyOf: [{ additionalProperties: false }, { additionalProperties: false }],
    });
  });

  it("takes properties that are called like keywords for what they are", () => {
    const part = { properties: { oneOf: { type: "string" }, type: { type: "string" } } };
    expect(liftFromChoices(part)).toEqual(part);
  });
});

describe("lists of so many entries", () => {
  const pair = (first: object, second: object, others: object = {}) => {
    return { type: "array", prefixItems: [first, second], items: false, minItems: 2, maxItems: 2, ...others };
  };
  const [mm, text] = [{ type: "number" }, { type: "string" }];

  it("have their kind said once where all are of one, at any depth", () => {
    const once = { type: "array", items: mm, minItems: 2, maxItems: 2 };
    expect(sayKindsOnce(pair(mm, mm))).toEqual(once);
    const line = { properties: { line: pair(pair(mm, mm), pair(mm, mm)) }, $defs: { point: pair(mm, mm) } };
    expect(sayKindsOnce(line)).toEqual({ properties: { line: { ...once, items: once } }, $defs: { point: once } });
  });

  it("stay where kinds differ, and where there may be fewer or more", () => {
    for (const kept of [pair(mm, text), pair(mm, mm, { minItems: 1 }), pair(mm, mm, { items: mm })]) {
      expect(sayKindsOnce(kept)).toEqual(kept);
    }
  });

  it("keep every limit but the largest exact whole number", () => {
    expect(sayKindsOnce({ type: "integer", minimum: 1, maximum: Number.MAX_SAFE_INTEGER })).toEqual({
      type: "integer",
      minimum: 1,
    });
    expect(sayKindsOnce({ type: "integer", maximum: 50 })).toEqual({ type: "integer", maximum: 50 });
  });
});
