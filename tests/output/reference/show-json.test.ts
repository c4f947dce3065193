import { describe, expect, it } from "vitest";
import { showJson } from "../../../src/output/reference/show-json.js";
import { exampleDocuments } from "../../support/example-documents.js";

describe("JSON as a person would write it", () => {
  it("is the same JSON, in lines that fit", () => {
    for (const document of Object.values(exampleDocuments())) {
      const text = showJson(document);
      expect(JSON.parse(text)).toEqual(document);
      for (const line of text.split("\n")) {
        // Only a single long value may be longer.
        if (line.length > 100) expect(line).toMatch(/^ *("[^"]*": )?"[^"]*",?$/);
      }
    }
  });

  it("keeps on a line what fits", () => {
    expect(showJson({ a: [1, 2], b: {}, c: "d" })).toBe('{ "a": [1, 2], "b": {}, "c": "d" }');
  });
});
