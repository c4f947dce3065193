// Across: comments on the fields of a type, from a schema beside it
import { describe, expect, it } from "vitest";
import { commentedType } from "../../tools/commented-design.mjs";

const FORMS = {
  $defs: {
    edge: { type: "number", description: "radius of its edges" },
    flat: {
      type: "object",
      properties: { form: { const: "flat", description: "always flat" }, edge: { $ref: "#/$defs/edge" } },
    },
    domed: {
      type: "object",
      properties: {
        form: { const: "domed", description: "always domed" },
        edge: { type: "number", description: "of a dome */ none" },
      },
    },
  },
  properties: {
    outside: { description: "its outside", anyOf: [{ $ref: "#/$defs/flat" }, { $ref: "#/$defs/domed" }] },
    list: { description: "a list", type: "array", items: { properties: { at: { description: "where" } } } },
    any: {
      description: "any of them",
      properties: { wall: { anyOf: [{ type: "number" }, { properties: { limit: { description: "its limit" } } }] } },
    },
    named: { description: "by name", additionalProperties: { properties: { of: { description: "what of" } } } },
  },
};

const TYPE = `/** Whole. */
export type Whole = {
    outside: {
        form: "flat";
        edge: number;
    } | {
        form: "domed";
        edge: number;
    };
    list?: {
        at: number;
    }[] | undefined;
    named: Record<string, {
        of: string;
    }>;
    any: {
        [x: string]: number | {
            limit?: number | undefined;
        } | undefined;
    };
};
`;

describe("comments on a type's fields", () => {
  it("are the schema's, of each form its own, in lists and records too; the type stays as it is", () => {
    const commented = commentedType(TYPE, "Whole", FORMS);
    expect(commented.match(/\/\*\* .* \*\/\n +\w+/g)?.map((one) => one.replace(/\s+/g, " "))).toEqual([
      "/** its outside */ outside",
      "/** always flat */ form",
      "/** radius of its edges */ edge",
      "/** always domed */ form",
      "/** of a dome *\\/ none */ edge",
      "/** a list */ list",
      "/** where */ at",
      "/** by name */ named",
      "/** what of */ of",
      "/** any of them */ any",
      "/** its limit */ limit",
    ]);
    expect(commented.replace(/\n +\/\*\* .* \*\//g, "")).toBe(TYPE);
  });

  it("are refused where a field has none", () => {
    const missing = { ...FORMS, properties: { ...FORMS.properties, list: undefined } };
    expect(() => commentedType(TYPE, "Whole", missing)).toThrow("has no description");
    expect(() => commentedType(TYPE.replace('"domed"', '"ridged"'), "Whole", FORMS)).toThrow(
      "Whole.outside.form has no description",
    );
  });
});
