import { checkDesign } from "annulet";
import { describe, expect, it } from "vitest";

/** Bars along the band, 0.6 mm across it where the tile is true. */
const design = (taper: object) => ({
  annulet: 1,
  size: { diameter: 17.5 },
  tolerance: 0.03,
  profile: { width: 8, thickness: 2.2, outside: { form: "channel", rail: 1, depth: 0.6 }, ...taper },
  pattern: {
    fit: { hold: "band", repeats: 8 },
    regions: [{ name: "bar", path: "M 0.5 0 H 4 V 0.6 H 0.5 Z", unit: "mm", height: 0.4 }],
  },
});

const figureOf = async (taper: object, rule: string) => {
  const { results, findings } = await checkDesign(design(taper));
  return {
    figure: results.find((one) => one.rule === rule)?.figure,
    place: findings.find((one) => one.rule === rule)?.places[0],
  };
};

describe("art on a band that narrows", () => {
  it("is judged where it is narrowest, and told there", async () => {
    const straight = await figureOf({}, "line");
    const tapered = await figureOf({ taper: { width: 4 } }, "line");
    // The floor is 6 mm across at the top and 2 at the back.
    expect(straight.figure).toBeNull();
    expect(tapered.figure).toBeCloseTo(0.6 / 3, 2);
    expect(Math.abs((tapered.place?.angle ?? 0) - 270)).toBeLessThan(45);
  });

  it("is judged at the top where it widens to the back", async () => {
    expect((await figureOf({ taper: { width: 9 } }, "line")).figure).toBeNull();
  });
});
