// Covers: src/measure/alloys/*
import { describe, expect, it } from "vitest";
import { alloys, findAlloy } from "../../../src/measure/alloys/catalogue.js";
import { mixDensity } from "../../../src/measure/alloys/mix.js";
import { pureDensities } from "../../../src/measure/alloys/pure.js";

/** ISO 9202, ‰. */
const ISO_9202: Record<string, readonly number[]> = {
  gold: [375, 585, 750, 916, 990, 999],
  silver: [800, 925, 958, 999],
  platinum: [850, 900, 950, 999],
  palladium: [500, 950, 999],
};

/** Finenesses in the trade that ISO 9202 does not list: US 10 karat and germanium silver. */
const NOT_IN_ISO_9202 = [417, 935];

describe.each(alloys)("$symbol", (alloy) => {
  it("has a density inside its range, and a source", () => {
    const [least, most] = alloy.range ?? [0.5, 23];
    expect(alloy.density).toBeGreaterThanOrEqual(least);
    expect(alloy.density).toBeLessThanOrEqual(most);
    expect(alloy.source).not.toBe("");
  });

  it("has a fineness of ISO 9202 if it is precious, and none if not", () => {
    const allowed = ISO_9202[alloy.kind];
    if (!allowed) return expect(alloy.fineness).toBeUndefined();
    expect([...allowed, ...NOT_IN_ISO_9202]).toContain(alloy.fineness);
    expect(alloy.symbol).toContain(String(alloy.fineness));
  });

  it("is found by its symbol, which no other has", () => {
    expect(findAlloy(alloy.symbol)).toBe(alloy);
  });
});

it.each([
  // tmtpages.com, specific gravity table 4; riogrande.com 2019 has the same.
  ["au750-yellow", 15.58],
  ["au750-white", 14.64],
  ["au750-red", 15.18],
  ["au750-green", 15.9],
  ["au585-yellow", 13.07],
  ["au585-white", 12.61],
  ["au585-red", 13.26],
  ["au585-green", 14.2],
  // Wax factors of a UK casting house over 1.05, designbuildcast.co.uk.
  ["au750-white-pd", 15.84],
  ["au585-white-pd", 14.24],
  ["au375-yellow", 11.13],
  ["au375-red", 11.33],
  ["au375-white", 12.63],
  // stuller.com, Where can I find the specific gravity.
  ["au417-yellow", 11.57],
  ["au417-white", 11.07],
  ["au417-red", 11.59],
  ["au417-green", 11.03],
  ["pt900-ir", 21.54],
  // Several or one credible source, see each alloy.
  ["au999", 19.32],
  ["ag999", 10.49],
  ["ag925", 10.36],
  ["ag935", 10.38],
  ["pt999", 21.45],
  ["pd999", 12.02],
  ["pd950", 12],
  ["bronze", 8.8],
  ["brass", 8.4],
  ["wax", 1],
  ["wax-bees", 0.95],
  ["resin", 1.09],
])("%s weighs the published %s g/cm³", (symbol, density) => {
  expect(findAlloy(symbol).density).toBe(density);
});

const { Au, Ag, Cu, Pt, Ir, Ru, Co, Zn } = pureDensities;

it.each([
  ["ag925", [Ag, 0.925, Cu, 0.075]],
  ["ag800", [Ag, 0.8, Cu, 0.2]],
  ["ag958", [Ag, 0.958, Cu, 0.042]],
  ["pt950-ru", [Pt, 0.95, Ru, 0.05]],
  ["pt950-co", [Pt, 0.95, Co, 0.05]],
  ["pt950-ir", [Pt, 0.95, Ir, 0.05]],
])("%s agrees with the mixing rule to its last decimal", (symbol, [first, firstShare, second, secondShare]) => {
  const mixed = mixDensity([
    { density: first, share: firstShare },
    { density: second, share: secondShare },
  ]);
  expect(Math.abs(mixed - findAlloy(symbol).density)).toBeLessThan(0.005);
});

it("has 9 ct yellow within 0.3 % of its stated composition", () => {
  const mixed = mixDensity([
    { density: Au, share: 0.375 },
    { density: Ag, share: 0.1 },
    { density: Cu, share: 0.45 },
    { density: Zn, share: 0.075 },
  ]);
  expect(Math.abs(mixed - findAlloy("au375-yellow").density)).toBeLessThan(0.03);
});

it("names the nearest to a symbol it does not know, and all it knows", () => {
  expect(() => findAlloy("ag952")).toThrow(
    expect.objectContaining({
      code: "material-unknown",
      path: "material",
      value: "ag952",
      allowed: alloys.map((alloy) => alloy.symbol).join(", "),
      hint: "Did you mean ag925?",
    }),
  );
});

it("tells what published figures span where they disagree", () => {
  expect(findAlloy("pt950-co")).toMatchObject({ range: [20.04, 20.8], certainty: "weak" });
  expect(findAlloy("au916").range).toEqual([17.7, 17.84]);
});

it("counts one shared table as one source", () => {
  const shared = alloys.filter(({ source }) => source.includes("tmtpages.com"));
  expect(shared).toHaveLength(8);
  for (const { certainty } of shared) expect(certainty).toBe("one credible source");
});

it("takes materials of the user's own", () => {
  const tin = { ...findAlloy("bronze"), symbol: "tin", density: 7.3 };
  expect(findAlloy("tin", { alloys: [tin] })).toBe(tin);
});
