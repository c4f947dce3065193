import { describe, expect, it } from "vitest";
import { fitBand } from "../../src/band/fit/fit-band.js";
import { buildProfile } from "../../src/band/profile/profile.js";
import { finish } from "../../src/base/pausing.js";
import { readDesign } from "../../src/design/read.js";
import type { Pattern } from "../../src/pattern/laid-out.js";
import { liftPattern } from "../../src/pattern/lift-pattern.js";
import { completePattern } from "../../src/pattern/pattern.js";
import { resolveSize } from "../../src/size/size.js";
import { bodiesOf } from "../support/stages.js";

const ribbon = { width: 0.8, weave: { lift: 0.3, over: "later" } };
const design = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.02,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.6, depth: 0.7 } },
  pattern: {
    fit: { repeats: 9 },
    regions: [
      { name: "pit", path: "M 0.05 -0.3 H 0.15 V -0.2 H 0.05 Z", mode: "sunk", depth: 0.2 },
      { name: "post", path: "M 0.5 -0.18 V 0.18", unit: "tile", height: 0.4, ribbon },
      { name: "bar", path: "M 0.2 0 H 0.8", height: 0.4, ribbon },
      { name: "leaf", path: "M 0.8 0.2 H 0.9 V 0.3 H 0.8 Z", height: 0.3, beads: { diameter: 0.1, on: "border" } },
    ],
  },
  beads: [{ along: { path: "M 0.1 0.25 H 0.3" }, diameter: 0.1 }],
};

/** mm that finishing takes off what is raised. */
const LIFT = 0.15;

function patternOf(): Pattern {
  const { pattern, beads, profile, tolerance, size } = readDesign(design);
  const warn = () => undefined;
  const boreRadius = resolveSize(size).diameter / 2;
  const fit = fitBand(pattern, { profile, boreRadius, tolerance, warn });
  if (pattern === undefined || fit === undefined) throw new Error("the design has a pattern");
  return finish(
    completePattern(pattern, beads, fit, {
      profile: buildProfile(profile, boreRadius, tolerance),
      tolerance,
      warn,
    }),
  );
}

describe("a pattern lifted", () => {
  const pattern = patternOf();
  const lifted = liftPattern(pattern, LIFT);

  it("has all that is raised so much higher, and nothing that is cut", () => {
    expect(lifted.bodies.map(({ mode }) => mode)).toContain("sunk");
    lifted.bodies.forEach((body, i) => {
      const by = body.mode === "raised" ? LIFT : 0;
      expect(body.height).toBeCloseTo(pattern.bodies[i].height + by, 12);
    });
    expect(lifted.height).toBeCloseTo(pattern.height + LIFT, 12);
  });

  it("has its bridges rise from so much higher", () => {
    const rises = (one: Pattern) => one.bodies.flatMap(({ rise }) => (rise === undefined ? [] : [rise.from]));
    expect(rises(pattern).length).toBeGreaterThan(0);
    expect(rises(lifted)).toEqual(rises(pattern).map((from) => from + LIFT));
  });

  it("has the beads of its regions so much higher, and those on the seat where they were", () => {
    const heights = (one: Pattern) => one.beadLines.map(({ height }) => height);
    expect(heights(pattern)).toEqual([0.3, 0]);
    expect(heights(lifted)).toEqual([0.3 + LIFT, 0]);
  });

  it("by nothing is itself", () => {
    expect(liftPattern(pattern, 0)).toBe(pattern);
  });

  it("is of a design that can be built", () => {
    expect(bodiesOf(design).parts.cuts).toHaveLength(1);
  });
});
