import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { placeStep } from "../../src/mesh/step.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { openInside } from "../../src/ring/open-ring.js";
import type { Parts } from "../../src/solids/parts.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";
import { box } from "../support/meshes.js";

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

/** Radius at which a peg begins, 0.3 mm under the rail's top of the ring, mm. */
const PEG_AT = 54 / (2 * Math.PI) + 2.2 - 0.3;

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

  it("stands where it stands beside an end of a unit: small pegs all round one", async () => {
    const parts = await partsOf([], "p1");
    const [{ to }] = parts.symmetry?.sectors ?? [];
    for (const degrees of [-0.5, 0, 0.5]) {
      const angle = to + (degrees * Math.PI) / 180;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      // 0.06 mm along the rail, half a degree is 0.09 mm; it stands 0.3 mm out of the rail.
      const upright = box([0.6, 0.06, 0.5], [PEG_AT, -0.03, 2.7]);
      const peg = transformMesh(upright, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
      const steps = [...parts.steps, placeStep("peg", "add", [peg])];
      const units = await uniteRing({ ...parts, steps }, options);
      const whole = await uniteRing({ ...parts, steps, symmetry: undefined }, options);
      expect([units.road, whole.road]).toEqual(["turn", "whole"]);
      expect(units.check).toMatchObject({ closed: true, components: 1, genus: whole.check.genus });
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
