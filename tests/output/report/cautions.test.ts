import { describe, expect, it } from "vitest";
import { cautions } from "../../../src/output/report/cautions.js";

describe("the cautions", () => {
  it("have a topic each and whole sentences", () => {
    expect(new Set(cautions.map(({ topic }) => topic)).size).toBe(cautions.length);
    for (const { text } of cautions) expect(text).toMatch(/^[A-Z].*\.$/s);
  });

  it("state the limits with their laws (REACH annex XVII entries 27, 23 and 63; 29 CFR 1910.1053; UK Hallmarking Act 1973)", () => {
    const text = cautions.map((caution) => caution.text).join(" ");
    for (const limit of ["0.5 µg", "0.01 %", "0.05 %", "50 µg/m³", "29 CFR 1910.1053", "7.78 g"]) {
      expect(text).toContain(limit);
    }
  });
});
