// Covers: src/ring/steps/fit.ts
/**
 * The fit at once is the fit of the opened ring, whose stages it calls by itself.
 */
import { fitDesign, openRing, type Warning } from "annulet";
import { describe, expect, it } from "vitest";
import { exampleDocuments } from "../support/example-documents.js";
import { failureOf } from "../support/failure-of.js";

const band = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 5, thickness: 2, outside: { form: "flat" } },
};

const patterned = Object.entries(exampleDocuments()).filter(([, { pattern }]) => pattern !== undefined);

describe("fitDesign", () => {
  it.each(patterned)("gives of %s what the opened ring gives, and says the same", async (_, document) => {
    const warnings: Warning[] = [];
    const fit = fitDesign(document, { warn: (warning) => warnings.push(warning) });
    const ring = openRing(document, { files: () => new Uint8Array() });
    expect(fit).toEqual(await ring.fit());
    expect(warnings.every(({ code, path }) => code !== "" && path !== undefined)).toBe(true);
  });

  it("passes warnings of a fit on, whether or not it is found", async () => {
    const wide = { ...band, pattern: { fit: { repeats: 3, hold: "band" } } };
    const warnings: Warning[] = [];
    fitDesign(wide, { warn: (warning) => warnings.push(warning) });
    expect(warnings.map(({ code }) => code)).toEqual(["tile-stretched"]);
  });

  it("is an error without a pattern, of a document that is none, and of a fit that cannot be, as the ring's", async () => {
    expect(failureOf(() => fitDesign(band)).code).toBe("no-pattern");
    expect(failureOf(() => fitDesign({ ...band, annulet: 7 })).code).toBe("document-version");
    const narrow = { ...band, pattern: { fit: { repeats: 1, aspect: 2 } } };
    const error = failureOf(() => fitDesign(narrow));
    const theirs = await openRing(narrow)
      .fit()
      .catch((cause: unknown) => cause);
    expect(error.problems).toEqual((theirs as typeof error).problems);
    expect(error.warnings).toEqual((theirs as typeof error).warnings);
  });

  it("stops at a limit of seconds", () => {
    const document = { ...band, pattern: { fit: { repeats: "auto" } } };
    expect(failureOf(() => fitDesign(document, { limits: { seconds: 1e-9 } })).code).toBe("too-long");
  });
});
