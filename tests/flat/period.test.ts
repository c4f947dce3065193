import { describe, expect, it } from "vitest";
import { ringBox } from "../../src/flat/box.js";
import { takePeriod } from "../../src/flat/period.js";
import { completeArt } from "../../src/relief/art.js";
import { areaOf, collector, region, stripOf } from "./strips.js";

describe("taking periods", () => {
  const drawn = region({ path: "M 0.1 -0.1 H 0.4 V 0.1 H 0.1 Z" });

  it("cuts where no outline turns back, so that nothing is sliced thin", () => {
    const strip = stripOf();
    const { region: whole } = completeArt(strip, drawn, "r", collector().warn);
    const one = takePeriod(strip, whole);
    expect(one).toHaveLength(1);
    expect(areaOf(strip, one)).toBeCloseTo(0.3 * 0.2 * 36, 9);
    const three = takePeriod(strip, whole, 1);
    expect(three).toHaveLength(3);
    expect(areaOf(strip, three)).toBeCloseTo(3 * 0.3 * 0.2 * 36, 9);
  });

  it("takes the stretch covered where the pattern stops", () => {
    const strip = stripOf({ cover: 120, repeats: 3 });
    const { region: whole } = completeArt(strip, drawn, "r", collector().warn);
    const covered = takePeriod(strip, whole);
    expect(covered).toHaveLength(3);
    for (const ring of covered) {
      const { left, right } = ringBox(ring);
      expect(left >= 0 && right <= 3 * strip.grid.tile).toBe(true);
    }
    expect(takePeriod(strip, [])).toEqual([]);
  });
});
