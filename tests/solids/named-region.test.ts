// Across: errors of a body that name its region
import { describe, expect, it } from "vitest";
import { patternSteps } from "../../src/solids/pattern-steps.js";
import { failureOf } from "../support/failure-of.js";
import { bodiesOf } from "../support/stages.js";

const plain = {
  annulet: 1,
  size: { diameter: 18 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, outside: { form: "flat" } },
  pattern: {
    fit: { repeats: 9, hold: "band" },
    regions: [{ name: "leaf", path: "M 0.2 -0.2 H 0.6 V 0.2 H 0.2 Z", height: 0.3 }],
  },
  proud: true,
};

describe("a body that cannot be made", () => {
  it("names its region and where that stands in the document", () => {
    const { pattern, profile, wrap } = bodiesOf(plain);
    const [body] = pattern.bodies;
    // Its outline crosses itself, as none that is drawn may.
    const [[[a, b, c, d, ...rest]]] = body.outline;
    const crossed = { ...body, outline: [[[a, c, b, d, ...rest]]] };
    const bend = () => ({ wrap, facets: 90, stations: [], repeats: 9 });
    const [step] = patternSteps([crossed], { profile, bend, clear: 0.2, keepClear: undefined });
    const error = failureOf(() => step.bodies());
    expect(error).toMatchObject({ code: "triangulation-failed", path: "pattern.regions[0]" });
    expect(error.message).toContain("(leaf)");
  });
});
