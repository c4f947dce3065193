import { describe, expect, it } from "vitest";
import { describeField, linesOf, objectsOf } from "../../../src/design/reference/describe-field.js";
import type { SchemaNode } from "../../../src/design/reference/schema-node.js";

const place = { path: "field", required: false };

function described(node: SchemaNode) {
  return describeField(node, {}, place);
}

describe("a field in words", () => {
  it.each<[SchemaNode, string | undefined]>([
    [{ type: "number", minimum: 0 }, "0 or more"],
    [{ type: "number", exclusiveMinimum: 0 }, "above 0"],
    [{ type: "number", exclusiveMinimum: 0, maximum: 10 }, "above 0 to 10"],
    [{ type: "number", minimum: 5, exclusiveMaximum: 60 }, "5 to below 60"],
    [{ type: "number", maximum: 15.707963267948966 }, "up to 15.708"],
    [{ type: "integer", minimum: 1, maximum: Number.MAX_SAFE_INTEGER }, "1 or more"],
    [{ type: "integer", minimum: Number.MIN_SAFE_INTEGER, maximum: Number.MAX_SAFE_INTEGER }, undefined],
    [{ type: "string", minLength: 1, maxLength: 200 }, "1 to 200 characters"],
    [{ type: "array", minItems: 2, maxItems: 2 }, "2 entries"],
    [{ type: "array", maxItems: 20 }, "at most 20 entries"],
    [{ anyOf: [{ const: "auto" }, { type: "integer", minimum: 1, maximum: 9 }] }, "1 to 9"],
    [{ type: "boolean" }, undefined],
  ])("tells the range of %j as %s", (node, range) => {
    expect(described(node).range).toBe(range);
  });

  it.each<[SchemaNode, string]>([
    [{ type: "number" }, "number"],
    [{ enum: ["on", "off"] }, "word"],
    [{ anyOf: [{ type: "integer" }, { const: "auto" }] }, "whole number or word"],
    [{ type: ["string", "number"] }, "text or number"],
    [{ type: "array", items: { type: "object" } }, "list of objects"],
    [{ type: "array", prefixItems: [{ type: "number" }, { type: "number" }] }, "list of 2: number"],
    [{}, "anything"],
  ])("tells the kind of %j as %s", (node, kind) => {
    expect(described(node).kind).toBe(kind);
  });

  it("finds the unit in the description of a number, as a word of its own", () => {
    expect(described({ type: "number", description: "width, mm, 0 to 5" }).unit).toBe("mm");
    expect(described({ type: "number", description: "density, g/cm³" }).unit).toBe("g/cm³");
    expect(described({ type: "number", description: "grammar of hummus" }).unit).toBeUndefined();
    expect(described({ type: "string", description: "a text of 3 mm" }).unit).toBeUndefined();
  });

  it("tells words and constants to choose from", () => {
    expect(described({ anyOf: [{ enum: ["a", "b"] }, { const: 1 }, { type: "number" }] }).choices).toEqual([
      "a",
      "b",
      1,
    ]);
  });

  it("has fields where there is one object, forms where there are several", () => {
    const one = { type: "object", properties: { a: { type: "number", default: 2 } }, required: ["a"] };
    expect(described(one)).toMatchObject({ fields: [{ name: "a", required: true, default: 2 }], forms: [] });
    const other = { type: "object", properties: { b: { type: "number" } } };
    const forms = [{ name: "{a}" }, { name: "{b}", fields: [{ name: "b", required: false }] }];
    expect(described({ type: "array", items: { anyOf: [one, other] } })).toMatchObject({ fields: [], forms });
    expect(objectsOf({ anyOf: [one, { type: "number" }] }, {})).toEqual([one]);
  });

  it("takes the description of a list's entries where the list has none", () => {
    const [line] = linesOf({ properties: { a: { type: "array", items: { description: "Reeds." } } } }, {});
    expect(line.description).toBe("Reeds.");
  });
});
