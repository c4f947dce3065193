import { describe, expect, it } from "vitest";
import { choicesOf, entriesOf, fieldsOf, follow, formName } from "../../../src/design/reference/schema-node.js";

const root = {
  $defs: {
    knot: { type: "object", description: "A knot.", properties: { form: { const: "knot" } } },
    loop: { $ref: "#/$defs/loop" },
    end: { oneOf: [{ $ref: "#/$defs/knot" }, { anyOf: [{ type: "number" }, { const: "cut" }] }] },
  },
};

describe("a node of a JSON Schema", () => {
  it("is what its reference points to, under what stands beside the reference", () => {
    expect(follow({ $ref: "#/$defs/knot", description: "The last knot." }, root)).toEqual({
      ...root.$defs.knot,
      description: "The last knot.",
    });
    expect(follow({ $ref: "#" }, root)).toEqual(root);
  });

  it("is nothing where its reference leads nowhere, or in a circle", () => {
    expect(follow({ $ref: "#/$defs/none" }, root)).toEqual({});
    expect(follow({ $ref: "#/$defs/loop" }, root)).toEqual({ $ref: "#/$defs/loop" });
  });

  it("opens choices in choices, through references", () => {
    expect(choicesOf({ $ref: "#/$defs/end" }, root)).toEqual([root.$defs.knot, { type: "number" }, { const: "cut" }]);
    expect(choicesOf({ type: "number" }, root)).toEqual([{ type: "number" }]);
    const together = { properties: { a: {}, b: {} }, oneOf: [{ required: ["a"] }, { required: ["b"] }] };
    expect(choicesOf(together, root)).toEqual([together]);
  });

  it("has entries if it is a list, and fields if it is an object", () => {
    expect(entriesOf({ prefixItems: [{ type: "number" }], items: { type: "string" } })).toHaveLength(2);
    expect(entriesOf({ items: false })).toEqual([]);
    expect(fieldsOf({ properties: { a: {} }, additionalProperties: { type: "number" } })).toEqual([
      ["a", {}],
      ["*", { type: "number" }],
    ]);
    expect(fieldsOf({ additionalProperties: false })).toEqual([]);
  });

  it("is named by its constant field, or by the fields that it must have", () => {
    expect(formName(root.$defs.knot, root)).toBe("knot");
    expect(formName({ properties: { a: {}, b: {} }, required: ["b"] }, root)).toBe("{b}");
    expect(formName({ type: "number" }, root)).toBeUndefined();
  });
});
