import { describe, expect, it } from "vitest";
import { referenceSchema } from "../../../src/design/json-schema.js";
import { readDesign } from "../../../src/design/read.js";
import { explainFieldOf } from "../../../src/design/reference/explain-field.js";
import { exampleDocuments } from "../../support/example-documents.js";

const schema = referenceSchema();
const designs = exampleDocuments();

/** Every path to a value of a document, lists passed through, each once. */
function pathsOf(value: unknown, path = ""): string[] {
  if (Array.isArray(value)) return value.flatMap((entry) => pathsOf(entry, path));
  if (typeof value !== "object" || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, path === "" ? key : `${path}.${key}`)),
  ];
}

describe("explaining a field", () => {
  it("knows every field that the examples use", () => {
    const paths = new Set(Object.values(designs).flatMap((design) => pathsOf(design)));
    expect(paths.size).toBeGreaterThan(150);
    for (const path of paths) expect(explainFieldOf(schema, path), path).not.toHaveLength(0);
  });

  it("says the defaults that reading fills in", () => {
    const plain = {
      annulet: 1,
      size: { diameter: 17 },
      profile: { bore: { form: "comfort" }, outside: { form: "channel" } },
    };
    const { profile, tolerance, proud } = readDesign({
      ...plain,
      profile: { width: 5, thickness: 2, ...plain.profile },
    });
    const presets = (path: string) => explainFieldOf(schema, path).map((field) => field.default);
    expect(presets("tolerance")).toEqual([tolerance]);
    expect(presets("proud")).toEqual([proud]);
    for (const [name, value] of Object.entries(profile.outside)) {
      if (name !== "form") expect(presets(`profile.outside.channel.${name}`), name).toEqual([value]);
    }
  });

  it("tells unit, range and whether the field has to be there", () => {
    expect(explainFieldOf(schema, "profile.outside.rail")).toMatchObject([
      { of: ["channel"], unit: "mm", range: "above 0", required: false, default: 0.9 },
    ]);
    expect(explainFieldOf(schema, "profile")).toMatchObject([{ kind: "object", required: true }]);
  });

  it("has a description for every field of the document's own", () => {
    for (const field of explainFieldOf(schema, "")[0].fields) expect(field.description, field.name).toBeTruthy();
  });
});
