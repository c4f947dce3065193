import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { openInside } from "../../src/ring/open-ring.js";
import type { Parts } from "../../src/solids/parts.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";

const font = "nunito.ttf";
const files = {
  [font]: readFileSync(
    new URL(
      "Nunito_800ExtraBold.ttf",
      import.meta.resolve("@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf"),
    ),
  ),
};

/** A ring of 12 tiles, coarse, with marks. */
async function partsOf(lettering: readonly object[], symmetry = "p2mm"): Promise<Parts> {
  const design = {
    annulet: 1,
    size: { system: "iso", value: 54 },
    tolerance: 0.04,
    profile: {
      width: 7,
      thickness: 2.2,
      bore: { form: "flat" },
      outside: { form: "channel", rail: 1.1, depth: 0.5 },
    },
    pattern: {
      symmetry,
      fit: { repeats: 12, hold: "band" },
      regions: [{ path: "M 0.2 0.1 L 0.4 0.3 L 0.44 0.06 Z", height: 0.3 }],
    },
    lettering: lettering.map((mark) => ({ font, ...mark })),
  };
  const { answers } = await openInside(design, { files }).ask(["parts"]);
  return answers.parts;
}

const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };

const INSIDE = { text: "EBB", at: "bore", height: 2, depth: 0.2 };
const ON_RAIL = { text: "UP", at: "rail", side: "+z", height: 0.6, mode: "raised", relief: 0.2, angle: 10 };

describe("marks on the units that they touch", () => {
  it.each([
    { name: "cut into the bore", marks: [INSIDE] },
    { name: "cut over the angle at which the units are counted", marks: [{ ...INSIDE, angle: -91 }] },
    { name: "raised on a rail", marks: [ON_RAIL] },
    { name: "both, near each other", marks: [{ ...INSIDE, angle: 20 }, ON_RAIL] },
  ])("$name: the same solid as marks on the whole ring", async ({ marks }) => {
    for (const symmetry of ["p2mm", "p1"]) {
      const parts = await partsOf(marks, symmetry);
      const units = await uniteRing(parts, options);
      const whole = await uniteRing({ ...parts, symmetry: undefined }, options);
      expect(units.check).toMatchObject({ closed: true, components: 1, genus: whole.check.genus });
      expect(units.road).toBe(symmetry === "p1" ? "turn" : "mirror");
      expect(whole.road).toBe("whole");
      expect(Math.abs(units.check.volume / whole.check.volume - 1)).toBeLessThan(1e-6);
    }
  });

  it("goes by the whole ring where they touch too much of it", async () => {
    const parts = await partsOf([{ ...INSIDE, text: "EBB AND FLOW AND EBB AND" }]);
    const units = await uniteRing(parts, options);
    expect(units.check.closed).toBe(true);
    const whole = await uniteRing({ ...parts, symmetry: undefined }, options);
    expect(Math.abs(units.check.volume / whole.check.volume - 1)).toBeLessThan(1e-6);
  });
});
