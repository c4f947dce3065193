import { describe, expect, it } from "vitest";
import { findField } from "../../../src/design/reference/find-field.js";
import type { SchemaNode } from "../../../src/design/reference/schema-node.js";
import { failureOf } from "../../support/failure-of.js";

const height = { type: "number", description: "height, mm" };
const root: SchemaNode = {
  properties: {
    parts: {
      type: "array",
      items: { oneOf: [form("reed", height), form("pool", { type: "string" }), form("leaf", height)] },
    },
    names: { additionalProperties: { $ref: "#/$defs/twig" } },
  },
  $defs: { twig: { properties: { of: { $ref: "#/$defs/twig" }, long: { type: "number" } } } },
};

function form(name: string, height: SchemaNode): SchemaNode {
  return { properties: { form: { const: name }, height }, required: ["form"] };
}

describe("finding a field", () => {
  it("looks in every form, and puts together those that say the same", () => {
    expect(findField("parts.height", root)).toEqual([
      { node: height, required: false, of: ["reed", "leaf"] },
      { node: { type: "string" }, required: false, of: ["pool"] },
    ]);
  });

  it("takes a form's name in the path, and indices of lists", () => {
    expect(findField("parts.pool.height", root)).toEqual([
      { node: { type: "string" }, required: false, of: undefined },
    ]);
    expect(findField("parts[3].height", root)).toEqual(findField("parts.height", root));
    expect(findField("parts.3.height", root)).toEqual(findField("parts.height", root));
  });

  it("takes any name where names are the user's, and goes round in what holds itself", () => {
    expect(findField("names.willow.of.of.of.long", root)).toMatchObject([{ node: { type: "number" } }]);
  });

  it.each([
    ["parts.heigth", "heigth", 'did you mean "height"?'],
    ["part", "part", 'did you mean "parts"?'],
    ["names.willow.long.more", "more", undefined],
    [`names${".of".repeat(100)}`, "of", undefined],
  ])("refuses %s", async (path, value, hint) => {
    const error = await failureOf(() => findField(path, root));
    expect(error).toMatchObject({ code: "field-unknown", value, hint });
  });
});
