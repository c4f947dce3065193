import { describe, expect, it } from "vitest";
import { designJsonSchema, type JsonSchema, referenceSchema } from "../../src/design/json-schema.js";
import { follow, type SchemaNode } from "../../src/design/reference/schema-node.js";
import { DESIGN_DEFAULTS, designSchema } from "../../src/design/schema.js";
import { fullDesign, plainBand } from "./documents.js";

describe("the design's schema", () => {
  it("fills in every default", () => {
    expect(designSchema.parse(plainBand)).toMatchObject({
      name: "ring",
      tolerance: 0.01,
      beads: [],
      stones: [],
      material: "ag925",
      proud: false,
      profile: { bore: { form: "flat" } },
    });
    expect(designSchema.parse({ ...plainBand, casting: {} }).casting).toEqual(DESIGN_DEFAULTS.casting);
    expect(designSchema.parse(plainBand)).not.toHaveProperty("pattern");
  });

  it("keeps what is given", () => {
    expect(designSchema.parse(fullDesign)).toMatchObject(fullDesign);
  });
});

describe("the design as JSON Schema", () => {
  const schema = designJsonSchema();
  const whole = referenceSchema();
  const properties = [...propertiesOf(whole, "")];

  it("is draft 2020-12, with a title, and only asks for what has no default", () => {
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(schema.title).toBe("annulet design");
    expect(schema.required).toEqual(["annulet", "size", "profile"]);
    expect(schema.additionalProperties).toBe(false);
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });

  it("describes every property", () => {
    expect(properties.length).toBeGreaterThan(60);
    const undescribed = properties.filter(
      ([, property]) => !follow(property as SchemaNode, whole as SchemaNode).description,
    );
    expect(undescribed.map(([path]) => path)).toEqual([]);
  });

  it("describes in short what the reference describes, but for constants", () => {
    const short = [...propertiesOf(schema, "")];
    const undescribed = short.filter(
      ([, property]) =>
        !follow(property as SchemaNode, schema as SchemaNode).description && property.const === undefined,
    );
    expect(undescribed.map(([path]) => path)).toEqual([]);
  });

  it("tells the forms apart by what they are", () => {
    const forms = properties.filter(([path, { const: value }]) => path.endsWith(".form") && value !== undefined);
    expect(forms.map(([, { const: value }]) => value)).toContain("channel");
    for (const [, { description, const: value }] of forms) expect(description).toContain(JSON.stringify(value));
  });

  it("has every key of the document", () => {
    expect(Object.keys(schema.properties ?? {})).toEqual(Object.keys(designSchema.shape));
  });
});

/** Every property anywhere in a JSON Schema, with its path. */
function* propertiesOf(node: unknown, path: string): Generator<[string, JsonSchema]> {
  if (typeof node !== "object" || node === null) return;
  for (const [key, inner] of Object.entries(node)) {
    if (key !== "properties") {
      yield* propertiesOf(inner, path);
      continue;
    }
    for (const [name, property] of Object.entries(inner as Record<string, JsonSchema>)) {
      yield [`${path}.${name}`, property];
      yield* propertiesOf(property, `${path}.${name}`);
    }
  }
}
