// Covers: src/output/reference/markdown.ts
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { referenceSchema } from "../../../src/design/json-schema.js";
import { referencePages } from "../../../src/output/reference/pages.js";
import { exampleDocuments } from "../../support/example-documents.js";

const FOLDER = new URL("../../../examples/reference/", import.meta.url);
const pages = referencePages({ schema: referenceSchema(), designs: exampleDocuments() });

describe("the reference", () => {
  it("in examples/reference is what `npm run reference` writes", () => {
    expect(readdirSync(FOLDER).sort()).toEqual(Object.keys(pages).sort());
    for (const [name, text] of Object.entries(pages)) {
      expect(readFileSync(new URL(name, FOLDER), "utf8") === text, `${name}: run npm run reference`).toBe(true);
    }
  });

  it("has a heading for every link", () => {
    const anchors = Object.entries(pages).flatMap(([name, text]) =>
      [...text.matchAll(/^#+ `(.+)`$/gm)].map(([, path]) => `${name}#${path.toLowerCase().replace(/[^\w-]/g, "")}`),
    );
    for (const [name, text] of Object.entries(pages)) {
      for (const [, target] of text.matchAll(/\]\(([^)]*#[^)]*)\)/g)) {
        expect(anchors).toContain(target.startsWith("#") ? name + target : target);
      }
    }
  });

  it("describes what comes again once, and links to it", () => {
    const all = Object.values(pages).join("\n");
    expect(all.match(/^## `.*regions`$/gm)).toEqual(["## `pattern.regions`"]);
    expect(pages["pattern.md"].match(/\[`regions`\]\(#patternregions\)/g)?.length).toBeGreaterThan(2);
  });

  it("keeps bars and line breaks out of its tables", () => {
    const schema = {
      properties: { part: { type: "object", properties: { a: { description: "this | that\nor more" } } } },
    };
    const { "part.md": text } = referencePages({ schema, designs: {} });
    expect(text).toContain("| `a` | anything |  | this \\| that or more |");
  });
});
