import { describe, expect, it } from "vitest";
import { shorten, wrapText } from "../../../src/output/drawing/svg-text.js";

describe("text of drawings", () => {
  it("is cut with an ellipsis where it is too long, by signs and not by halves of them", () => {
    expect(shorten("four", 4)).toBe("four");
    expect(shorten("fives", 4)).toBe("fiv…");
    expect(shorten("𝒶𝒷𝒸𝒹", 3)).toBe("𝒶𝒷…");
  });

  it("is broken at spaces, and within words that are longer than a line", () => {
    expect(wrapText("a band of reeds", 7)).toEqual(["a band", "of", "reeds"]);
    expect(wrapText("abcdefgh ij", 3)).toEqual(["abc", "def", "gh", "ij"]);
    expect(wrapText("one", 10)).toEqual(["one"]);
  });
});
