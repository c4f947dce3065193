import { describe, expect, it } from "vitest";
import { narrowestPlace } from "../../src/flat/narrowest.js";
import { completeArt } from "../../src/relief/art.js";
import { collector, region, stripOf } from "./strips.js";

describe("the narrowest place", () => {
  it("is where the region comes apart, not at a tip nor at a corner", () => {
    // A blade whose tip at x 0.95 is sharper than anything, on a body with a neck of half width 0.03 at x 0.4.
    const path =
      "M 0.05 -0.2 H 0.35 V -0.03 H 0.45 V -0.2 H 0.6 L 0.95 0 L 0.6 0.2 H 0.45 V 0.03 H 0.35 V 0.2 H 0.05 Z";
    const strip = stripOf();
    const { region: whole } = completeArt(strip, region({ path }), "r", collector().warn);
    const place = narrowestPlace(strip, whole, 0.03 * 6);
    expect(Math.abs(place.x - 0.4)).toBeLessThan(0.05);
    expect(Math.abs(place.y)).toBeLessThan(0.01);
  });
});
