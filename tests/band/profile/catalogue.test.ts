// Covers: src/band/profile/explain-misfit.ts, src/band/profile/grown.ts, src/band/profile/form.ts
// Covers: src/band/profile/outsides/index.ts, src/band/profile/bores/*, src/design/profile/*.ts
// Covers: src/design/profile/bores/*, src/design/profile/outsides/*
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { BORES } from "../../../src/band/profile/bores/index.js";
import { largestThatFits } from "../../../src/band/profile/explain-misfit.js";
import { grownProfile } from "../../../src/band/profile/grown.js";
import { OUTSIDES } from "../../../src/band/profile/outsides/index.js";
import { buildOutline, buildProfile } from "../../../src/band/profile/profile.js";
import { segmentLength } from "../../../src/base/math/curve.js";
import type { Point2 } from "../../../src/base/math/point.js";
import type { OutsideSpec } from "../../../src/design/profile/outside.js";
import { profileSchema } from "../../../src/design/profile/profile.js";
import { failureOf, spec } from "./specs.js";

/** What each form needs beyond its defaults; a new form must be entered here before this compiles. */
const NEEDS: Readonly<Record<OutsideSpec["form"], object>> = {
  flat: {},
  domed: {},
  channel: {},
  bevelled: {},
  concave: {},
  knife: {},
  free: { path: "M -3 1.2 Q 0 2.4 3 1.2" },
};

/** Radii at which a cross-section's outline is met at w, the least and the greatest, mm. */
function radiiAt(polyline: readonly Point2[], w: number): readonly [number, number] {
  const met = polyline.flatMap(([aw, ar], i) => {
    const [bw, br] = polyline[(i + 1) % polyline.length];
    return (aw - w) * (bw - w) > 0 || aw === bw ? [] : [ar + ((br - ar) * (w - aw)) / (bw - aw)];
  });
  return [Math.min(...met), Math.max(...met)];
}

describe.each(Object.keys(OUTSIDES))("outside %s", (form) => {
  describe.each(Object.keys(BORES))("on bore %s", (bore) => {
    const input = { width: 6, thickness: 1.8, bore: { form: bore }, outside: { form, ...Reflect.get(NEEDS, form) } };

    test("builds with its defaults, symmetric, with a seat", () => {
      const profile = buildProfile(spec(input), 8.5, 0.01);
      expect(profile.symmetric).toBe(true);
      expect(profile.bore).toBe(bore);
      expect(profile.seatLength).toBeGreaterThan(1);
      expect(profile.outsideRadius).toBeGreaterThan(8.5 + 1.8 - 0.1);
      expect(profile.outsideRadius).toBeLessThanOrEqual(8.5 + 1.8 + 1e-9);
      expect(profile.outline.every((segment) => segmentLength(segment) > 0)).toBe(true);
    });

    test("the seat's length grows steadily with the width, as a solver for the width needs", () => {
      const lengths = Array.from({ length: 200 }, (_, i) => {
        return buildOutline(spec({ ...input, width: 5.0003 + i / 100 }), 8.5, 0.01).seatLength;
      });
      for (let i = 1; i < lengths.length; i++) {
        expect(lengths[i]).toBeGreaterThan(lengths[i - 1]);
        expect(lengths[i] - lengths[i - 1]).toBeLessThan(0.02);
      }
    });

    test("before finishing, each finished face stands out by what is taken off, and no other", () => {
      const by = { bore: 0.05, outside: 0.08 };
      const drawn = buildProfile(spec(input), 8.5, 1e-4);
      const grown = buildProfile(grownProfile(spec(input), by), 8.5 - by.bore, 1e-4);
      const rails = OUTSIDES[form as OutsideSpec["form"]].finished === "rails";
      expect(rails).toBe(drawn.rails !== undefined);
      // Clear of the corners where a rail's side, which is upright, is rounded into its top and the floor.
      const [first, last] = drawn.seatSpan;
      const wide = Math.max(...drawn.polyline.slice(first, last + 1).map(([w]) => Math.abs(w)));
      for (let w = -2.95; w < 3; w += 0.0317) {
        const [inner, outer] = radiiAt(drawn.polyline, w);
        const [innerGrown, outerGrown] = radiiAt(grown.polyline, w);
        expect(inner - innerGrown).toBeCloseTo(by.bore, 3);
        if (!rails) expect(outerGrown - outer).toBeCloseTo(by.outside, 3);
        else if (Math.abs(w) < wide - 0.1) expect(outerGrown).toBeCloseTo(outer, 3);
        else if (Math.abs(w) > wide + 0.3) expect(outerGrown - outer).toBeCloseTo(by.outside, 3);
      }
    });

    test("a size beyond the model's, put past the schema, is refused", () => {
      for (const width of [1000.1, 1e300]) {
        const failure = failureOf(() => buildProfile({ ...spec(input), width }, 8.5, 0.01));
        expect(failure).toMatchObject({ code: "profile-not-finite", path: "profile.width" });
      }
    });
  });
});

test("every field of the published schema is described", () => {
  const undescribed: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (typeof node !== "object" || node === null) return;
    for (const [name, property] of Object.entries(Reflect.get(node, "properties") ?? {})) {
      const isTag = typeof property === "object" && property !== null && "const" in property;
      if (!isTag && !Reflect.has(property as object, "description")) undescribed.push(`${path}.${name}`);
    }
    for (const [name, child] of Object.entries(node)) walk(child, `${path}/${name}`);
  };
  walk(z.toJSONSchema(profileSchema, { io: "input" }), "profile");
  expect(undescribed).toEqual([]);
});

describe("the largest value that fits", () => {
  test("is found in the run nearest under the request, its ends rounded inwards", () => {
    expect(largestThatFits((x) => x <= 0.4567, 2)).toEqual({ least: 0, largest: 0.456 });
    expect(largestThatFits((x) => x >= 0.2003 && x <= 0.45, 2)).toEqual({ least: 0.201, largest: 0.45 });
  });

  test("is nothing where nothing fits", () => {
    expect(largestThatFits(() => false, 2)).toBeUndefined();
  });
});
