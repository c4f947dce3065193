import { createHash } from "node:crypto";
import { readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { digestOf } from "../../src/design/digest.js";
import { fullDesign } from "./documents.js";

const band = { annulet: 1, size: { diameter: 17 }, profile: { width: 5, thickness: 1.8, outside: { form: "flat" } } };

const digest = (document: unknown) => digestOf(readDesign(document));

describe("a design's digest", () => {
  it("is the same for documents that mean the same", () => {
    const { annulet, size, profile } = band;
    const written = {
      $schema: "design.json",
      profile: { outside: { form: "flat" }, thickness: 1.8, width: 5 },
      ...{ size, material: "ag925", tolerance: 0.01, annulet },
    };
    expect(digest(written)).toBe(digest(band));
    expect(digest(JSON.stringify(written, null, 4))).toBe(digest(band));
    expect(digest(readDesign(band))).toBe(digest(band));
    expect(profile.width).toBe(5);
  });

  it("is another for every change", () => {
    const others = [
      { ...band, name: "other" },
      { ...band, tolerance: 0.011 },
      { ...band, size: { circumference: 17 * Math.PI } },
      { ...band, beads: [{ along: "seat-edge", diameter: 0.4 }] },
      fullDesign,
    ];
    expect(new Set([band, ...others].map(digest)).size).toBe(others.length + 1);
  });

  it("is that of the sorted text (RFC 8785), as other programs write it", () => {
    const text =
      '{"alloys":[],"annulet":1,"beads":[],"lettering":[],"material":"ag925","name":"ring","profile":{"bore":' +
      '{"edge":0.2,"form":"flat"},"outside":{"edge":0.2,"form":"flat"},"thickness":1.8,"width":5},"proud":false,' +
      '"size":{"diameter":17},"stones":[],"tolerance":0.01}';
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(readDesign(band))));
    expect(digest(band)).toBe(createHash("sha256").update(text).digest("hex"));
  });

  it("sorts names that are numbers as text, as the standard's example does (RFC 8785, 3.2.3)", () => {
    const named = (names: readonly string[]) => ({
      ...fullDesign,
      alloys: names.map((symbol) => ({ symbol: `a${symbol}`, density: 9 })),
      costing: { currency: "EUR", prices: Object.fromEntries(names.map((name) => [`a${name}`, 1])) },
    });
    const [one, other] = [named(["10", "9"]), named(["10", "9"])];
    other.costing.prices = { a9: 1, a10: 1 };
    expect(digest(other)).toBe(digest(one));
  });
});
