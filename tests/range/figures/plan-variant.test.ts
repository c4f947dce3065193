// Covers: src/range/figures/*, src/range/expand/expand-plan.ts
import { build, fitDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { expandPlan } from "../../../src/range/expand/expand-plan.js";
import type { PlannedVariant } from "../../../src/range/figures/plan-variant.js";

/** Square tiles with relief that has no mirror, on a channel; coarse. */
const BASE = {
  annulet: 1,
  name: "Heron",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: { regions: [{ path: "M 0.1 0.16 L 0.8 0.2 L 0.14 0.4 Z", height: 0.3 }] },
  beads: [{ along: "rail", diameter: 0.5 }],
};

const HELD = { ...BASE, pattern: { ...BASE.pattern, fit: { hold: "band" } } };

const SIZES = { size: { system: "iso", from: 48, to: 64, step: 4 } };

async function planned(more: object, base: object = BASE): Promise<PlannedVariant[]> {
  const found: PlannedVariant[] = [];
  for await (const variant of expandPlan({ range: 1, base, vary: [SIZES], ...more })) found.push(variant);
  return found;
}

const figure = (variant: PlannedVariant, key: "tileWidth" | "repeats" | "stretch" | "bandWidth") =>
  variant.kind === "fault" ? undefined : variant.figures[key];

describe("what is known of variants before they are made", () => {
  it("is their fit as it is built, and their weight within 3 % of it", async () => {
    const [small, , , , large] = await planned({});
    for (const variant of [small, large]) {
      if (variant.kind !== "planned") throw new Error(variant.kind);
      const { report } = await build(variant.document, { piece: "finished" });
      const { fit } = report;
      expect([variant.figures.repeats, variant.figures.bandWidth]).toEqual([fit?.repeats, report.band.width]);
      expect(Math.abs(variant.figures.volume / report.volume - 1)).toBeLessThan(0.03);
      expect(variant.figures.weight / variant.figures.volume).toBeCloseTo(report.mass.ag925 / report.volume, 12);
    }
  });

  it("is the fit that the library finds, which tries more numbers of repeats", async () => {
    for (const fit of [{}, { hold: "band" }, { aspect: 0.4 }, { aspect: 3, rows: 2 }, { repeats: 15 }]) {
      for (const cycle of [1, 3]) {
        const base = { ...BASE, beads: [], pattern: { cycle, fit } };
        for (const variant of await planned({}, base)) {
          if (variant.kind !== "planned") throw new Error(JSON.stringify(variant));
          const found = fitDesign(variant.document);
          const { repeats, tileWidth, bandWidth, stretch } = variant.figures;
          expect({ repeats, tileWidth, bandWidth, stretch }).toEqual({
            repeats: found.repeats,
            tileWidth: found.tileWidth,
            bandWidth: found.bandWidth,
            stretch: found.stretch,
          });
        }
      }
    }
  });

  it("leaves out what a filter names, and says why", async () => {
    const all = await planned({}, HELD);
    const limit = 0.02;
    const some = await planned({ leaveOut: [{ figure: "stretch", above: limit }] }, HELD);
    const stretched = all.map((variant) => Math.abs((figure(variant, "stretch") ?? 1) - 1) > limit);
    expect(new Set(stretched).size).toBe(2);
    expect(some.map(({ kind }) => kind === "left-out")).toEqual(stretched);
    const out = some.find(({ kind }) => kind === "left-out");
    expect(out).toMatchObject({ why: expect.stringMatching(/^stretch 0\.0\d+ is above 0\.02$/) });
  });

  it("is a fault where no ring can be made of one, and the others go on", async () => {
    const found = await planned({ vary: [{ path: "profile.width", values: [6, -2, 0.9] }] });
    expect(found.map(({ kind }) => kind)).toEqual(["planned", "fault", "fault"]);
    expect(found[1]).toMatchObject({ problems: [{ code: "value-invalid", path: "profile.width" }] });
  });
});

describe("a family", () => {
  it("has tiles as wide as it asks for in every size, by as many repeats as that takes", async () => {
    const tileWidth = { from: 3.3, to: 3.9 };
    const found = await planned({ family: { tileWidth } }, HELD);
    const repeats = found.map((variant) => Number(figure(variant, "repeats")));
    for (const variant of found) {
      expect(variant.kind).toBe("planned");
      expect(figure(variant, "tileWidth")).toBeGreaterThan(tileWidth.from);
      expect(figure(variant, "tileWidth")).toBeLessThan(tileWidth.to);
    }
    expect(repeats).toEqual(repeats.toSorted((a, b) => a - b));
    expect(new Set(repeats).size).toBeGreaterThan(2);
    // Held against the formula: as many as make tiles nearest to the middle, in ratio.
    const [first] = found;
    const around = (figure(first, "tileWidth") ?? 0) * repeats[0];
    const off = (n: number) => Math.abs(Math.log(around / n / 3.6));
    const best = Array.from({ length: 100 }, (_, i) => i + 1).sort((a, b) => off(a) - off(b))[0];
    expect(repeats[0]).toBe(best);
    expect(first).toMatchObject({ document: { pattern: { fit: { repeats: best } } } });
  });

  it("leaves out what cannot keep within it: bands, rails, beads, detail", async () => {
    const whys = async (family: object) =>
      (await planned({ family, vary: [{ material: ["ag925"] }] })).map((one) => ("why" in one ? one.why : one.kind));
    expect(await whys({ bandWidth: { from: 1, to: 2 } })).toEqual([expect.stringMatching(/^bandWidth .* above 2$/)]);
    expect(await whys({ rail: { from: 1, to: 2 } })).toEqual(["rail 0.9 is below 1"]);
    expect(await whys({ beadRatio: { from: 2, to: 3 } })).toEqual([
      expect.stringMatching(/^beadRatio [\d.]+ is below 2$/),
    ]);
    expect(await whys({ detail: 3 })).toEqual([expect.stringMatching(/^detail [\d.]+ is below 3$/)]);
    const wide = { rail: { from: 0.5, to: 1 }, bandWidth: { from: 1, to: 20 }, beadRatio: { from: 0.5, to: 2 } };
    expect(await whys({ ...wide, detail: 0.001 })).toEqual(["planned"]);
  });

  it("leaves numbers that are written as they are", async () => {
    const written = { ...HELD, pattern: { ...HELD.pattern, fit: { repeats: 9, hold: "band" } } };
    const family = { tileWidth: { from: 0.1, to: 90 } };
    const repeats = (await planned({ family }, written)).map((variant) => figure(variant, "repeats"));
    expect(repeats).toEqual(Array(5).fill(9));
  });
});
