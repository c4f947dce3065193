/**
 * Sharing parts of a JSON Schema: written out again, the result is what it was made from.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SchemaPart, shareParts } from "../../src/design/share-parts.js";

const radius = { type: "number", minimum: 0, maximum: 5, description: "radius of the rounded top edge, mm" };
const fields = { type: "object", properties: { radius, name: { type: "string", description: "what it is called" } } };

describe("sharing parts", () => {
  it("writes what comes again once, under its property's name", () => {
    const shared = shareParts({ properties: { near: fields, far: fields } });
    expect(shared.properties).toEqual({ near: { $ref: "#/$defs/near" }, far: { $ref: "#/$defs/near" } });
    expect(shared.$defs).toEqual({ near: fields });
  });

  it("keeps description and default at each place where they differ", () => {
    const own = (description: string, preset: number) => ({ default: preset, ...fields, description });
    const shared = shareParts({ properties: { a: own("one", 1), b: own("other", 2) } });
    expect(shared.properties).toEqual({
      a: { $ref: "#/$defs/a", description: "one", default: 1 },
      b: { $ref: "#/$defs/a", description: "other", default: 2 },
    });
  });

  it("leaves short parts and those that come once where they are", () => {
    const schema = { properties: { a: { type: "string" }, b: { type: "string" }, c: fields } };
    expect(shareParts(schema)).toEqual({ ...schema, $defs: {} });
  });

  it("keeps definitions that are there, and takes no name twice", () => {
    const $defs = { near: { type: "string" } };
    const shared = shareParts({ properties: { near: fields, far: fields, text: { $ref: "#/$defs/near" } }, $defs });
    expect(shared.$defs).toEqual({ ...$defs, "near-2": fields });
    expect((shared.properties as SchemaPart).text).toEqual({ $ref: "#/$defs/near" });
  });

  it("takes constants for no schemas, though they look like some", () => {
    const schema = { properties: { a: { const: { items: fields } }, b: { const: { items: fields } } } };
    expect(expand(shareParts(schema))).toEqual(schema);
    expect(JSON.stringify(shareParts({ enum: [fields, fields] }))).not.toContain("$ref");
  });

  it("means the same, whatever is shared", () => {
    const leaf = fc.constantFrom<SchemaPart>(
      radius,
      { ...radius, description: "another radius" },
      { type: "null" },
      fields,
    );
    const { part } = fc.letrec<{ part: SchemaPart }>((tie) => ({
      part: fc.oneof(
        { maxDepth: 4 },
        leaf,
        fc.record({ properties: fc.dictionary(fc.constantFrom("a", "b", "c"), tie("part")) }),
        fc.record({ anyOf: fc.array(tie("part"), { maxLength: 3 }), description: fc.constantFrom("x", "y") }),
        fc.record({ items: tie("part"), default: fc.constantFrom(0, 1) }),
      ),
    }));
    fc.assert(
      fc.property(part, (schema) => {
        expect(expand(shareParts(schema))).toEqual(schema);
      }),
    );
  });
});

/** All references written out, by recursion over any JSON. */
function expand(schema: SchemaPart): unknown {
  const { $defs, ...root } = schema;
  const write = (value: unknown): unknown => {
    if (typeof value !== "object" || value === null) return value;
    if (Array.isArray(value)) return value.map(write);
    const { $ref, ...beside } = value as SchemaPart;
    const target = $ref === undefined ? {} : write(($defs as SchemaPart)[String($ref).replace("#/$defs/", "")]);
    const written = Object.entries(beside).map(([key, inner]) => [key, write(inner)]);
    return { ...(target as object), ...Object.fromEntries(written) };
  };
  return write(root);
}
