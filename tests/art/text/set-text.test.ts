// Covers: src/art/text/direction.ts
import { describe, expect, it } from "vitest";
import { directionOf } from "../../../src/art/text/direction.js";
import { setText } from "../../../src/art/text/set-text.js";
import { failureOf } from "../../support/failure-of.js";
import { typefaceOf } from "../../support/fonts.js";

const [nunito, alegreya, hebrew, amiri] = await Promise.all(
  (["nunito", "alegreya", "hebrew", "amiri"] as const).map(typefaceOf),
);
const options = { height: 2, where: "lettering[0].text" };

describe("directionOf", () => {
  it.each([
    ["Low water, 14 June", "ltr"],
    ["Δέλτα и вода", "ltr"],
    ["(שלום)", "rtl"],
    ["سلام", "rtl"],
    ["שלום 14", "rtl"],
    ["سلام ١٤", "rtl"],
    ["· ·", "ltr"],
  ])("%s is %s", (text, direction) => {
    expect(directionOf(text, "text")).toBe(direction);
  });

  it.each([
    ["  ", "text-empty"],
    ["low\nwater", "text-control-character"],
    ["low\u200fwater", "text-control-character"],
    ["שלום reed", "text-mixes-directions"],
    ["שלום १४", "text-mixes-directions"],
    ["שלום سلام", "text-mixes-scripts"],
    ["reed नदी", "text-mixes-scripts"],
  ])("%j is refused: %s", (text, code) => {
    expect(failureOf(() => directionOf(text, "text"))).toMatchObject({ code, path: "text", value: text });
  });
});

describe("setText", () => {
  it("names the characters that the font lacks, with their numbers", () => {
    const error = failureOf(() => setText(nunito, "Reed 日 ∮", options));
    expect(error).toMatchObject({ code: "glyph-missing", path: options.where, value: "日∮" });
    expect(error.message).toContain("日 (U+65E5)");
    expect(error.message).toContain("∮ (U+222E)");
  });

  it("composes marks: e and an accent are set as é", () => {
    const [composed, apart] = [setText(nunito, "\u00e9", options), setText(nunito, "e\u0301", options)];
    expect(apart.glyphs.map(({ outline }) => outline)).toEqual(composed.glyphs.map(({ outline }) => outline));
    expect(apart.advance).toBe(composed.advance);
  });

  it.each([nunito, alegreya])("makes the letter H as high as said", (typeface) => {
    const { glyphs, scale } = setText(typeface, "H", { ...options, height: 3 });
    const ys = [...glyphs[0].outline.matchAll(/-?\d+(?:\.\d+)?,(-?\d+(?:\.\d+)?)/g)].map(([, y]) => Number(y));
    // Outlines of these faces touch their highest line with corners or extremes, so control points tell it.
    expect(Math.max(...ys) * scale).toBeCloseTo(3, 6);
  });

  it("puts spacing between letters, and none behind the last", () => {
    const [tight, wide] = [0, 0.5].map((spacing) => setText(nunito, "reed", { ...options, spacing }));
    expect(wide.advance - tight.advance).toBeCloseTo(3 * 0.5, 9);
    expect(wide.glyphs[2].origin[0] - tight.glyphs[2].origin[0]).toBeCloseTo(2 * 0.5, 9);
  });

  it("joins fi where the font does, but not where it is spaced", () => {
    const counts = [0, 0.2].map((spacing) => setText(alegreya, "fi", { ...options, spacing }).glyphs.length);
    expect(counts).toEqual([1, 2]);
  });

  it("sets Hebrew from right to left, its first letter last", () => {
    const glyphs = setText(hebrew, "של", options).glyphs;
    expect(glyphs.map(({ characters }) => characters)).toEqual(["ל", "ש"]);
    expect(glyphs[1].origin[0]).toBeGreaterThan(glyphs[0].origin[0]);
  });

  it("joins Arabic letters by their place in the word, and keeps them joined", () => {
    const alone = setText(amiri, "ب", options).glyphs[0].outline;
    const first = setText(amiri, "بب", options).glyphs.at(-1)?.outline;
    expect(first).not.toBe(alone);
    const error = failureOf(() => setText(amiri, "سلام", { ...options, spacing: 0.3 }));
    expect(error.code).toBe("spacing-tears-joins");
  });
});
