import { describe, expect, it } from "vitest";
import { alloys, findAlloy } from "../../../src/measure/alloys/catalogue.js";
import { lookOf } from "../../../src/measure/alloys/look.js";

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
    expect(colourOf("au585-red")).toEqual(colourOf("au750-red"));
  });

  it("knows alloys of the user's own by colour and by kind", () => {
    const own = { ...findAlloy("au750-yellow"), symbol: "au800-white" };
    expect(lookOf(own).colour).toEqual(lookOf(findAlloy("au750-white")).colour);
    expect(lookOf({ ...own, symbol: "own", kind: "silver" }).colour).toEqual(lookOf(findAlloy("ag925")).colour);
  });
});
