import { describe, expect, it } from "vitest";
import { alloys, findAlloy } from "../../../src/measure/alloys/catalogue.js";
import { lookOf } from "../../../src/measure/alloys/look.js";
import { toSrgb } from "../../../src/output/picture/tone.js";

/** CIE XYZ of linear sRGB, white at Y = 1 (IEC 61966-2-1). */
function toXyz([r, g, b]: readonly [number, number, number]) {
  return [
    0.4124 * r + 0.3576 * g + 0.1805 * b,
    0.2126 * r + 0.7152 * g + 0.0722 * b,
    0.0193 * r + 0.1192 * g + 0.9505 * b,
  ] as const;
}

/** CIE 1976 a* and b*, D65. */
function toLab(colour: readonly [number, number, number]) {
  const [x, y, z] = toXyz(colour);
  const f = (t: number) => Math.cbrt(t);
  return { a: 500 * (f(x / 0.9505) - f(y)), b: 200 * (f(y) - f(z / 1.089)) };
}

describe("lookOf", () => {
  it.each(alloys.map((alloy) => [alloy.symbol, alloy] as const))("gives %s a colour that can be shown", (_, alloy) => {
    const { name, colour, metal } = lookOf(alloy);
    expect(name).toBe(alloy.name);
    expect(metal).toBe(alloy.kind !== "pattern");
    for (const value of colour) expect(value > 0 && value <= 1).toBe(true);
  });

  it("tells the golds apart: yellow is the least blue, white the least coloured, red redder than green", () => {
    const colourOf = (symbol: string) => lookOf(findAlloy(symbol)).colour;
    const spread = (symbol: string) => Math.max(...colourOf(symbol)) - Math.min(...colourOf(symbol));
    expect(spread("au750-yellow")).toBeGreaterThan(spread("au750-red"));
    expect(spread("au750-white")).toBeLessThan(spread("au750-green"));
    expect(colourOf("au750-red")[1]).toBeLessThan(colourOf("au750-green")[1]);
  });

  it("knows alloys of the user's own by colour and by kind", () => {
    const own = { ...findAlloy("au750-yellow"), symbol: "au800-white" };
    expect(lookOf(own).colour).toEqual(lookOf(findAlloy("au750-white")).colour);
    expect(lookOf({ ...own, symbol: "own", kind: "silver" }).colour).toEqual(lookOf(findAlloy("ag999")).colour);
  });

  it("shows pure metals as published: sRGB of filament's table of metals (google/filament, material properties)", () => {
    const published = {
      ag999: [250, 249, 245],
      au999: [255, 220, 157],
      pt999: [214, 209, 200],
      brass: [244, 228, 173],
    };
    for (const [symbol, bytes] of Object.entries(published)) {
      expect(lookOf(findAlloy(symbol)).colour.map((share) => Math.round(255 * toSrgb(share)))).toEqual(bytes);
    }
  });

  it("orders golds as their names do: yellower with more gold, redder with copper, greener with silver", () => {
    const lab = (symbol: string) => toLab(lookOf(findAlloy(symbol)).colour);
    const yellow = ["au375-yellow", "au585-yellow", "au750-yellow", "au916", "au999"].map((symbol) => lab(symbol).b);
    expect(yellow).toEqual([...yellow].sort((p, q) => p - q));
    for (const carat of ["au585", "au750"]) {
      expect(lab(`${carat}-red`).a).toBeGreaterThan(lab(`${carat}-yellow`).a);
      expect(lab(`${carat}-green`).a).toBeLessThan(lab(`${carat}-yellow`).a);
    }
  });

  it("shows white golds that count as white", () => {
    // Yellowness index of ASTM D1925, 100 (1.28 X − 1.06 Z) / Y, below 32: grade 3 and better of the scale in S. Henderson,
    // D. Manchanda, White gold alloys, Gold Bulletin 38(2), 2005 (its index is for illuminant C; here D65 stands for it;
    // the limit is from memory).
    for (const symbol of ["au417-white", "au585-white", "au750-white"]) {
      const [x, y, z] = toXyz(lookOf(findAlloy(symbol)).colour);
      expect((100 * (1.28 * 100 * x - 1.06 * 100 * z)) / (100 * y)).toBeLessThan(32);
    }
  });
});
