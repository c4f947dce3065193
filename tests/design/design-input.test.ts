/**
 * The document's type: made of the schema, and true to it by another way, all examples and what they may not be.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import type { DesignInput } from "../../src/design/design-input.js";
import { referenceSchema } from "../../src/design/json-schema.js";
import { designInputText } from "../../tools/design-input.mjs";
import { exampleDocuments } from "../support/example-documents.js";
import { problemsIn } from "../support/type-check.js";

const FILE = fileURLToPath(new URL("../../src/design/design-input.ts", import.meta.url));

const band = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 5, thickness: 2, outside: { form: "flat" } },
};

/** Lines that ask of documents whether they are designs. */
const asDesigns = (documents: readonly unknown[]) =>
  `import type { DesignInput } from ${JSON.stringify(FILE)};\n${documents
    .map((document) => `(${JSON.stringify(document)}) satisfies DesignInput;`)
    .join("\n")}\n`;

describe("the type of a design", () => {
  it("is what its schema says: npm run reference", () => {
    expect(readFileSync(FILE, "utf8")).toBe(designInputText(referenceSchema()));
  });

  it("has a comment on every field", () => {
    const source = ts.createSourceFile(FILE, readFileSync(FILE, "utf8"), ts.ScriptTarget.Latest, true);
    const bare: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isPropertySignature(node) && ts.getJSDocCommentsAndTags(node).length === 0) bare.push(node.getText());
      ts.forEachChild(node, visit);
    };
    visit(source);
    expect(bare).toEqual([]);
  });

  it("fits every example, and no document that is none", () => {
    const wrong = [
      { ...band, annulet: 2 },
      { ...band, size: { system: "isoo", value: 54 } },
      { ...band, profile: { ...band.profile, outside: { form: "flatt" } } },
      { ...band, pattern: { regions: [{ motif: { name: "fann" } }] } },
      { ...band, swirl: 1 },
      { ...band, profile: { width: "5", thickness: 2, outside: { form: "flat" } } },
      { size: band.size, profile: band.profile },
    ];
    const own = { ...band, material: "my-own" };
    const right = [band, own, ...Object.values(exampleDocuments())];
    // The first document stands in the second line.
    const lines = problemsIn(asDesigns([...right, ...wrong])).map(({ line }) => line);
    expect([...new Set(lines)]).toEqual(wrong.map((_, i) => right.length + i + 2));
  });

  it("takes constants and what is undefined", () => {
    const design = { ...band, annulet: 1, material: undefined } as const;
    const size = { system: "iso", value: 54 } as const;
    const profile = { width: 5, thickness: 2, outside: { form: "flat" } } as const;
    const typed: DesignInput = { ...design, size, profile };
    expect(typed.size).toEqual(band.size);
  });
});
