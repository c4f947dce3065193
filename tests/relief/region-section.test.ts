import { describe, expect, it } from "vitest";
import type { RunLine } from "../../src/flat/runs.js";
import { completeArt } from "../../src/relief/art.js";
import { carryingHeight, requireCarried, sectionOf } from "../../src/relief/region-section.js";
import { collector, failureOf, region, stripOf } from "../flat/strips.js";

/** A bar 2 mm wide along the whole of a tile of 6 mm, as a ribbon. */
const bar = (more: object, ribbon: object = {}) =>
  region({ path: "M 0 0 H 1", ribbon: { width: 2, ...ribbon }, ...more });

function heightOf(spec: ReturnType<typeof region>): number {
  const strip = stripOf({ tolerance: 0.001 });
  return carryingHeight(strip, spec, completeArt(strip, spec, "r", collector().warn).region, "r");
}

describe("the section of a region", () => {
  it("is its own, in its own place", () => {
    const ridge = { form: "ridge", height: 0.6 };
    const own = sectionOf(region({ path: "M 0 0", height: undefined, section: ridge }), "r");
    expect(own).toMatchObject({ section: ridge, path: "r.section" });
  });

  it("is flat where only a height or a depth is given, of what is sunk by its depth", () => {
    expect(sectionOf(region({ path: "M 0 0", height: 0.4, round: 0.1 }), "r")).toEqual({
      section: { form: "flat", height: 0.4, round: 0.1, bevel: 0, draft: 0 },
      path: "r",
    });
    const sunk = sectionOf(region({ path: "M 0 0", height: undefined, mode: "sunk", depth: 0.3 }), "r");
    expect(sunk.section).toMatchObject({ form: "flat", height: 0.3 });
  });
});

describe("the height that carries beads", () => {
  it("of a flat region is its height, of a sunk one its floor", () => {
    expect(heightOf(bar({ height: 0.4 }))).toBe(0.4);
    expect(heightOf(bar({ height: undefined, mode: "sunk", depth: 0.3 }))).toBe(-0.3);
  });

  it("on a ridge is all of it over the centre line, and a share of it inside", () => {
    const ridge = { height: undefined, section: { form: "ridge", height: 0.6 } };
    const on = (place: unknown) => heightOf(bar({ ...ridge, beads: { diameter: 0.3, on: place } }));
    expect(on("centre")).toBeCloseTo(0.6, 2);
    // Half a millimetre inside a ridge that rises over 1 mm.
    expect(on(0.5)).toBeCloseTo(0.3, 2);
    // Beyond the middle it falls again: 1.5 mm from one side is 0.5 mm from the other.
    expect(on(1.5)).toBeCloseTo(0.3, 2);
  });
});

describe("beads that would not stand on their region", () => {
  const line = (kind: RunLine["kind"]): RunLine => ({
    points: [
      [0, 0],
      [1, 0],
    ],
    kind,
    even: false,
  });
  const domed = { height: undefined, section: { form: "domed", height: 0.5 } };
  const centre = { beads: { diameter: 0.3, on: "centre" } };

  it("are refused along an open ribbon whose section falls at its ends, not where it closes or runs round", () => {
    const spec = bar({ ...domed, ...centre });
    expect(failureOf(() => requireCarried(spec, [line("loop"), line("open")], "r"))).toMatchObject({
      code: "beads-off-region",
      path: "r.beads.on",
      value: "centre",
    });
    expect(() => requireCarried(spec, [line("loop"), line("strand")], "r")).not.toThrow();
    expect(() => requireCarried(bar({ height: 0.4, ...centre }), [line("open")], "r")).not.toThrow();
  });

  it("are refused along a tapering ribbon unless it is flat", () => {
    const tapering = { width: 2, to: 0.5 };
    expect(
      failureOf(() => requireCarried(bar({ ...domed, ...centre }, tapering), [line("loop")], "r")).message,
    ).toContain("tapering");
    expect(() => requireCarried(bar({ height: 0.4, ...centre }, tapering), [line("open")], "r")).not.toThrow();
  });

  it("are refused beside the centre lines of several ribbons", () => {
    const several = (on: unknown) =>
      bar({ height: 0.4, beads: { diameter: 0.2, on } }, { width: 0.4, copies: { count: 2, gap: 0.3 } });
    expect(failureOf(() => requireCarried(several(0.1), [], "r")).message).toContain("gaps between them");
    expect(() => requireCarried(several("centre"), [], "r")).not.toThrow();
  });

  it("are no matter without beads or without a ribbon", () => {
    expect(() => requireCarried(bar(domed), [line("open")], "r")).not.toThrow();
    expect(() => requireCarried(region({ path: "M 0 0", ...domed, ...centre }), [line("open")], "r")).not.toThrow();
  });
});
