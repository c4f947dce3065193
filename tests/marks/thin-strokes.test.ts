import { describe, expect, it } from "vitest";
import { finish } from "../../src/base/pausing.js";
import { keepsParts } from "../../src/flat/keeps-parts.js";
import { shrink } from "../../src/flat/polygons.js";
import { steps } from "../../src/flat/strip.js";
import { narrowestStroke } from "../../src/marks/thin-strokes.js";
import { completeArt } from "../../src/relief/art.js";
import { collector, region, stripOf } from "../flat/strips.js";

/** Bars and a frame, tile widths; a tile is 6 mm wide. */
const bar = (x: number, width: number) => `M ${x} -0.3 H ${x + width} V 0.3 H ${x} Z`;
const FRAME = "M 0.75 -0.3 H 0.95 V 0.3 H 0.75 Z M 0.78 -0.27 V 0.27 H 0.92 V -0.27 Z";

describe("the narrowest stroke", () => {
  const strip = stripOf();
  const of = (path: string) => completeArt(strip, region({ path }), "r", collector().warn).region;

  it("is that of the narrowest letter, with its place, as of all letters at once", () => {
    const whole = of(`${bar(0.1, 0.04)} ${bar(0.3, 0.02)} ${bar(0.5, 0.035)} ${FRAME}`);
    const found = finish(narrowestStroke(strip, whole, 0.3));
    expect(found?.width).toBeCloseTo(0.12, 2);
    expect(found?.x).toBeCloseTo(0.31 * 6, 1);
    // All letters at once, halving as far: the same width to the last bit.
    let [good, bad] = [0, 0.15];
    while (bad - good > 5e-4) {
      const middle = (good + bad) / 2;
      if (keepsParts(whole, shrink(whole, steps(strip, middle), strip.arcTolerance))) good = middle;
      else bad = middle;
    }
    expect(found?.width).toBe(2 * good);
  });

  it("is looked for letter by letter, so that a signal is heard between any two", () => {
    const letters = Array.from({ length: 9 }, (_, i) => bar(0.02 + 0.1 * i, 0.04)).join(" ");
    expect([...narrowestStroke(strip, of(letters), 0.3)].length).toBeGreaterThanOrEqual(9);
  });

  it("is the wall of a frame, and none where all are wide enough", () => {
    expect(finish(narrowestStroke(strip, of(`${bar(0.1, 0.04)} ${FRAME}`), 0.3))?.width).toBeCloseTo(0.18, 2);
    expect(finish(narrowestStroke(strip, of(bar(0.1, 0.06)), 0.3))).toBeUndefined();
  });
});
