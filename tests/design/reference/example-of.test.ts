import { describe, expect, it } from "vitest";
import { exampleOf } from "../../../src/design/reference/example-of.js";

const short = { reed: [1] };
const rich = { reed: [1, 2, 3] };
const endless = { reed: Array.from({ length: 1000 }, (_, i) => i) };

describe("an example of a field", () => {
  it("is the one with most to say that is still short", () => {
    expect(exampleOf("reed", { short, rich, endless })).toEqual({ value: [1, 2, 3], from: "rich" });
  });

  it("is the shortest where all are long, and missing where there is none", () => {
    expect(exampleOf("reed", { endless })).toMatchObject({ from: "endless" });
    expect(exampleOf("pool", { short })).toBeUndefined();
  });

  it("does not depend on the order of documents", () => {
    const twin = { reed: [3, 2, 1] };
    expect(exampleOf("reed", { rich, twin })).toEqual(exampleOf("reed", { twin, rich }));
  });
});
