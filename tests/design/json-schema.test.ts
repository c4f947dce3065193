/**
 * The published JSON Schema against an independent validator: it takes what the reader takes as far as a schema can tell,
 * and sharing parts changes nothing of what it means.
 */
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { designJsonSchema } from "../../src/design/json-schema.js";
import { designSchema } from "../../src/design/schema.js";
import { exampleDocuments } from "../support/example-documents.js";
import { fullDesign, plainBand } from "./documents.js";

/** Most characters that editors are given: 60 000, and what five settings and four places of stones take. */
const LARGEST = 66_000;

const schema = designJsonSchema();
const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false });
const isValid = ajv.compile(schema);
const plain = ajv.compile(z.toJSONSchema(designSchema, { io: "input" }));
const documents = Object.entries(exampleDocuments());

describe("the design's JSON Schema", () => {
  it("is short: what comes again is written once", () => {
    expect(JSON.stringify(schema).length).toBeLessThan(LARGEST);
  });

  it.each(documents)("takes %s", (_, document) => {
    expect(isValid(document), JSON.stringify(isValid.errors?.slice(0, 3))).toBe(true);
  });

  it("takes a document with every field", () => {
    expect(isValid(fullDesign), JSON.stringify(isValid.errors?.slice(0, 3))).toBe(true);
  });

  const broken: [string, object][] = [
    ["no size", { ...plainBand, size: undefined }],
    ["two sizes", { ...plainBand, size: { diameter: 17, circumference: 54 } }],
    ["another version", { ...plainBand, annulet: 2 }],
    ["a text for a number", { ...plainBand, tolerance: "0.01" }],
    ["a number out of range", { ...plainBand, tolerance: -1 }],
    ["an unknown form", { ...plainBand, profile: { width: 5, thickness: 2, outside: { form: "round" } } }],
    [
      "a field of another form",
      { ...plainBand, profile: { width: 5, thickness: 2, outside: { form: "flat", rail: 1 } } },
    ],
    ["a region of unknown mode", { ...plainBand, pattern: { regions: [{ path: "M0 0", mode: "flat" }] } }],
    ["an unknown motif", { ...plainBand, pattern: { regions: [{ motif: { name: "spiral" }, height: 1 }] } }],
    ["a shape of two kinds", { ...plainBand, pattern: { shapes: { a: { path: "M0 0", svg: "a.svg" } } } }],
    [
      "a shape wrong three deep",
      { ...plainBand, pattern: { shapes: { a: { union: [{ offset: 1, of: { turns: 1 } }] } } } },
    ],
    ["a limit of an unknown rule", { ...plainBand, rules: { limits: { wal: 1 } } }],
    [
      "a point of three numbers",
      { ...plainBand, pattern: { shapes: { a: { turns: 3, about: [0, 0, 0], of: { path: "M0 0" } } } } },
    ],
  ];
  it.each(broken)("refuses %s", (_, document) => {
    const written = JSON.parse(JSON.stringify(document));
    expect(designSchema.safeParse(written).success).toBe(false);
    expect(isValid(written)).toBe(false);
    expect(plain(written)).toBe(false);
  });

  it("says of every document with one value changed what the schema says whose parts are written out", () => {
    const verdicts = { good: 0, bad: 0 };
    for (const [name, document] of [...documents, ["full", fullDesign] as const]) {
      for (const [what, changed] of changes(document)) {
        const verdict = isValid(changed);
        expect(plain(changed), `${name}: ${what}`).toBe(verdict);
        verdicts[verdict ? "good" : "bad"]++;
      }
    }
    // Both kinds are among them, or nothing was compared.
    expect(verdicts.bad).toBeGreaterThan(1000);
    expect(verdicts.good).toBeGreaterThan(100);
  });

  it("refuses an unknown key in every object of every document", () => {
    for (const [name, document] of documents) {
      for (const [path, object] of objectsIn(document, "")) {
        // Keys of these are the user's own.
        if (/\.(shapes|prices)$/.test(path)) continue;
        object["no-such-key"] = 1;
        expect(isValid(document), `${name}: ${path}`).toBe(false);
        delete object["no-such-key"];
      }
      expect(isValid(document)).toBe(true);
    }
  });
});

type Keyed = Record<string | number, unknown>;

/** The document with each value in turn made another: a text, a number far too large, null, or left out. */
function* changes(document: unknown): Generator<[string, unknown]> {
  const copy = structuredClone(document);
  for (const [path, object] of objectsIn(copy, "", true)) {
    for (const key of Object.keys(object)) {
      const before = object[key];
      for (const value of ["another", 1e9, null, [], 1]) {
        object[key] = value;
        yield [`${path}.${key} = ${JSON.stringify(value)}`, copy];
      }
      object[key] = before;
    }
  }
}

function* objectsIn(value: unknown, path: string, lists = false): Generator<[string, Keyed]> {
  if (typeof value !== "object" || value === null) return;
  if (lists || !Array.isArray(value)) yield [path, value as Keyed];
  for (const [key, inner] of Object.entries(value)) yield* objectsIn(inner, `${path}.${key}`, lists);
}
