/**
 * The text of a JSON Schema: the same schema, short, one line for each property and definition.
 */
import { describe, expect, it } from "vitest";
import { showSchema } from "../../src/cli/show-schema.js";
import { designJsonSchema } from "../../src/design/json-schema.js";
import { reportJsonSchema } from "../../src/output/report/report-json-schema.js";

/** Most bytes of the printed design schema, so that editors cope: 60 000, and what five settings and four places of stones take. */
const MOST_BYTES = 66_000;

const schemas: [string, object][] = [
  ["the design", designJsonSchema()],
  ["the report", reportJsonSchema()],
];

describe("the printed schema", () => {
  it.each(schemas)("of %s is read back as it was", (_, schema) => {
    expect(JSON.parse(showSchema(schema))).toEqual(JSON.parse(JSON.stringify(schema)));
  });

  it("of the design is short", () => {
    expect(Buffer.byteLength(showSchema(designJsonSchema()))).toBeLessThan(MOST_BYTES);
  });

  it("has a line for each property and definition, and for nothing inside them", () => {
    const lines = showSchema({
      type: "object",
      properties: { a: { properties: { b: {} } }, "c:d": { const: "}" } },
      $defs: { e: {} },
    }).split("\n");
    expect(lines).toEqual([
      "{",
      '"type":"object",',
      '"properties":{',
      '"a":{"properties":{"b":{}}},',
      '"c:d":{"const":"}"}',
      "},",
      '"$defs":{',
      '"e":{}',
      "}",
      "}",
    ]);
  });

  it("takes a schema without anything in it", () => {
    expect(JSON.parse(showSchema({}))).toEqual({});
    expect(JSON.parse(showSchema({ properties: {} }))).toEqual({ properties: {} });
  });
});
