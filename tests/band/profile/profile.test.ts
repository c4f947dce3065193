// Covers: src/band/profile/close-chain.ts, src/band/profile/outline.ts, src/band/profile/check-sizes.ts, src/band/profile/check-wall.ts
// Covers: src/band/profile/misfit.ts, src/band/profile/least-sizes.ts, src/band/profile/seat.ts
// Covers: src/band/profile/outsides/*
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bandVolume, outlineMoments } from "../../../src/band/profile/moments.js";
import { buildProfile, type Profile } from "../../../src/band/profile/profile.js";
import { AnnuletError } from "../../../src/base/errors.js";
import { pointAt, segmentEnd, segmentLength, segmentStart, tangentAt } from "../../../src/base/math/curve.js";
import { findCrossing, polygonArea } from "../../../src/base/math/polygon.js";
import type { ProfileSpec } from "../../../src/design/profile/profile.js";
import { anySpec, boreRadius, failureOf, SEED, spec } from "./specs.js";

const TOLERANCES = [0.05, 0.01, 0.001];

/** Builds where the sizes go together; skips the run otherwise. */
function built(input: unknown, radius: number, tolerance: number): Profile {
  try {
    return buildProfile(spec(input), radius, tolerance);
  } catch (error) {
    if (error instanceof AnnuletError) fc.pre(false);
    throw error;
  }
}

function everyProfile(check: (profile: Profile, tolerance: number) => void): void {
  fc.assert(
    fc.property(anySpec, boreRadius, fc.constantFrom(...TOLERANCES), (input, radius, tolerance) =>
      check(built(input, radius, tolerance), tolerance),
    ),
    { seed: SEED, numRuns: 200, maxSkipsPerRun: 100 },
  );
}

test("the outline is closed, and pieces join", () => {
  everyProfile(({ outline }) => {
    outline.forEach((segment, i) => {
      const [aw, ar] = segmentEnd(segment);
      const [bw, br] = segmentStart(outline[(i + 1) % outline.length]);
      expect(Math.hypot(aw - bw, ar - br)).toBeLessThan(2e-9);
    });
  });
});

test("the polyline is simple, counter-clockwise, and inside width, bore and outside", () => {
  everyProfile((profile) => {
    const { polyline, width } = profile;
    expect(polygonArea(polyline)).toBeGreaterThan(0);
    expect(findCrossing(polyline)).toBeUndefined();
    const [ws, rs] = [polyline.map(([w]) => w), polyline.map(([, r]) => r)];
    expect(Math.max(...ws)).toBeLessThanOrEqual(width / 2 + 1e-9);
    expect(Math.min(...ws)).toBeGreaterThanOrEqual(-width / 2 - 1e-9);
    expect(Math.min(...rs)).toBeGreaterThanOrEqual(profile.boreRadius - 1e-9);
    expect(Math.max(...rs)).toBeLessThanOrEqual(profile.outsideRadius + 1e-9);
  });
});

test("no point of the outline is further from the polyline than the tolerance", () => {
  everyProfile(({ outline, polyline }, tolerance) => {
    for (const segment of outline) {
      for (let i = 0; i <= 20; i++) {
        const [w, r] = pointAt(segment, (segmentLength(segment) * i) / 20);
        let nearest = Number.POSITIVE_INFINITY;
        polyline.forEach(([aw, ar], j) => {
          const [bw, br] = polyline[(j + 1) % polyline.length];
          const [dw, dr] = [bw - aw, br - ar];
          const t = Math.min(1, Math.max(0, ((w - aw) * dw + (r - ar) * dr) / (dw * dw + dr * dr)));
          nearest = Math.min(nearest, Math.hypot(aw + t * dw - w, ar + t * dr - r));
        });
        expect(nearest).toBeLessThanOrEqual(tolerance * (1 + 1e-6) + 1e-9);
      }
    }
  });
});

test("volume of the polyline's band is within tolerance × surface of the exact one", () => {
  everyProfile((profile, tolerance) => {
    const { polyline } = profile;
    const lines = polyline.map((from, i) => ({
      kind: "line" as const,
      from,
      to: polyline[(i + 1) % polyline.length],
    }));
    const bound = 2 * Math.PI * tolerance * outlineMoments(profile.outline).lengthMomentR;
    expect(Math.abs(bandVolume({ outline: lines }) - bandVolume(profile))).toBeLessThanOrEqual(bound + 1e-6);
  });
});

test("every fillet is tangent on both sides: an arc that was asked for never meets its neighbour at an angle", () => {
  fc.assert(
    fc.property(anySpec, boreRadius, (input, radius) => {
      const sizes = input as { bore: { edge: number }; outside: { form: string; edge: number; ridge?: number } };
      // With every corner rounded and no drawn curve, the whole outline must be smooth.
      fc.pre(
        sizes.outside.form !== "free" && sizes.bore.edge > 0 && sizes.outside.edge > 0 && sizes.outside.ridge !== 0,
      );
      fc.pre((input.outside as { root?: number }).root !== 0);
      const { outline } = built(input, radius, 0.01);
      outline.forEach((segment, i) => {
        const [ax, ay] = tangentAt(segment, segmentLength(segment));
        const [bx, by] = tangentAt(outline[(i + 1) % outline.length], 0);
        expect(Math.abs(ax * by - ay * bx)).toBeLessThan(2e-9);
        expect(ax * bx + ay * by).toBeGreaterThan(0);
      });
    }),
    { seed: SEED, numRuns: 300, maxSkipsPerRun: 200 },
  );
});

test("the seat's span in the polyline has the seat's ends, and its length to the tolerance", () => {
  everyProfile(({ polyline, seat, seatLength, seatSpan: [first, last] }) => {
    const at = (i: number) => polyline[i];
    const [low, high] = [segmentStart(seat[0]), segmentEnd(seat[seat.length - 1])];
    expect(Math.hypot(at(first)[0] - high[0], at(first)[1] - high[1])).toBeLessThan(1e-8);
    expect(Math.hypot(at(last)[0] - low[0], at(last)[1] - low[1])).toBeLessThan(1e-8);
    expect(last).toBeGreaterThan(first);
    let length = 0;
    for (let i = first; i < last; i++) length += Math.hypot(at(i + 1)[0] - at(i)[0], at(i + 1)[1] - at(i)[1]);
    expect(length).toBeLessThanOrEqual(seatLength + 1e-9);
    expect(length).toBeGreaterThan(seatLength * 0.97);
    expect(seat.reduce((sum, segment) => sum + segmentLength(segment), 0)).toBeCloseTo(seatLength, 12);
  });
});

test("a symmetric profile's polyline is its own mirror image, to the last bit", () => {
  everyProfile(({ polyline, symmetric }) => {
    if (!symmetric) return;
    const points = new Set(polyline.map(([w, r]) => `${w} ${r}`));
    for (const [w, r] of polyline) expect(points.has(`${w === 0 ? 0 : -w} ${r}`)).toBe(true);
  });
});

test("a larger bore moves the outline out and changes nothing else", () => {
  fc.assert(
    fc.property(anySpec, (input) => {
      const [small, large] = [built(input, 8, 0.01), built(input, 9, 0.01)];
      expect(large.polyline).toHaveLength(small.polyline.length);
      large.polyline.forEach(([w, r], i) => {
        expect(Math.hypot(w - small.polyline[i][0], r - 1 - small.polyline[i][1])).toBeLessThan(1e-8);
      });
    }),
    { seed: SEED, numRuns: 100, maxSkipsPerRun: 100 },
  );
});

describe("channel", () => {
  const profile = buildProfile(
    spec({
      width: 7.4,
      thickness: 1.9,
      bore: { form: "comfort", rise: 0.25, edge: 0.3 },
      outside: { form: "channel", rail: 0.9, depth: 0.55, edge: 0.2, root: 0.1 },
    }),
    8.75,
    0.01,
  );

  test("rails keep the flat between their rounded corners, low w first", () => {
    expect(profile.rails?.top).toBeCloseTo(8.75 + 1.9, 12);
    const numbers = profile.rails?.faces.flat() ?? [];
    [-3.5, -3, 3, 3.5].forEach((w, i) => {
      expect(numbers[i]).toBeCloseTo(w, 12);
    });
  });

  test("the seat is the floor between the root fillets, from low w to high w", () => {
    expect(profile.seatLength).toBeCloseTo(7.4 - 2 * 0.9 - 2 * 0.1, 12);
    expect(segmentStart(profile.seat[0])[0]).toBeCloseTo(-2.7, 12);
    expect(segmentStart(profile.seat[0])[1]).toBeCloseTo(8.75 + 1.9 - 0.55, 12);
  });

  test("a crowned floor's seat is an arc of that height", () => {
    const crowned = buildProfile(
      spec({ width: 7, thickness: 2, outside: { form: "channel", rail: 1, depth: 0.6, crown: 0.3 } }),
      9,
      0.01,
    );
    expect(pointAt(crowned.seat[0], crowned.seatLength / 2)[1]).toBeCloseTo(9 + 2 - 0.6 + 0.3, 12);
    expect(segmentStart(crowned.seat[0])[1]).toBeCloseTo(9 + 2 - 0.6, 12);
  });
});

test("a knife's seat holds both slopes and the nose; its nose lowers the outside", () => {
  const profile = buildProfile(
    spec({ width: 5, thickness: 2, outside: { form: "knife", rise: 1, ridge: 0.5, edge: 0 } }),
    9,
    0.01,
  );
  expect(profile.seat.map(({ kind }) => kind)).toEqual(["line", "arc", "line"]);
  // A nose of radius ρ between slopes at angle a ends ρ (1 / cos a − 1) under the sharp ridge.
  expect(profile.outsideRadius).toBeCloseTo(11 - 0.5 * (Math.hypot(2.5, 1) / 2.5 - 1), 12);
});

test("the bevelled band's seat is the flat middle alone", () => {
  const profile = buildProfile(
    spec({ width: 6, thickness: 2, outside: { form: "bevelled", bevel: 1, drop: 0.5, edge: 0 } }),
    9,
    0.01,
  );
  expect(profile.seat).toHaveLength(1);
  expect(profile.seatLength).toBeCloseTo(4, 12);
});

describe("sizes that do not go together name the value that would", () => {
  const band = { width: 6, thickness: 1.8 };
  const cases: readonly [name: string, input: object, code: string, path: string][] = [
    ["edge over half a rail", { outside: { form: "channel", edge: 0.5 } }, "fillet-too-large", "outside.edge"],
    ["root deeper than the wall", { outside: { form: "channel", root: 0.6 } }, "fillet-too-large", "outside.root"],
    ["rails without a channel", { outside: { form: "channel", rail: 3.1 } }, "rail-too-wide", "outside.rail"],
    ["channel through the bore", { outside: { form: "channel", depth: 1.75 } }, "depth-too-large", "outside.depth"],
    ["floor above rails", { outside: { form: "channel", crown: 0.6 } }, "crown-too-high", "outside.crown"],
    ["outer edge over the wall", { outside: { form: "flat", edge: 2 } }, "fillet-too-large", "outside.edge"],
    [
      "outer edge over half the width",
      { thickness: 5, outside: { form: "flat", edge: 3.2 } },
      "fillet-too-large",
      "outside.edge",
    ],
    [
      "inner edge over the wall",
      { bore: { form: "flat", edge: 1.7 }, outside: { form: "flat", edge: 0.3 } },
      "fillet-too-large",
      "bore.edge",
    ],
    [
      "inner edge of a comfort bore",
      { bore: { form: "comfort", rise: 0.3, edge: 2 }, outside: { form: "domed", edge: 0.1 } },
      "fillet-too-large",
      "bore.edge",
    ],
    [
      "comfort bore past the side walls",
      { bore: { form: "comfort", rise: 1.9, edge: 0 }, outside: { form: "flat", edge: 0 } },
      "bore-larger-than-outside",
      "bore.rise",
    ],
    [
      "dome down to the bore",
      { bore: { form: "flat", edge: 0 }, outside: { form: "domed", rise: 1.75, edge: 0 } },
      "rise-too-large",
      "outside.rise",
    ],
    [
      "dome over a half circle",
      { width: 3, thickness: 4, outside: { form: "domed", rise: 1.6, edge: 0 } },
      "rise-too-large",
      "outside.rise",
    ],
    ["edge of a dome", { outside: { form: "domed", rise: 1, edge: 1.6 } }, "fillet-too-large", "outside.edge"],
    ["bevels that meet", { outside: { form: "bevelled", bevel: 3 } }, "bevel-too-wide", "outside.bevel"],
    [
      "bevels down to the bore",
      { bore: { form: "flat", edge: 0 }, outside: { form: "bevelled", drop: 2, edge: 0 } },
      "drop-too-large",
      "outside.drop",
    ],
    ["hollow down to the bore", { outside: { form: "concave", dip: 1.72 } }, "dip-too-large", "outside.dip"],
    ["nose wider than the slopes", { outside: { form: "knife", ridge: 30 } }, "fillet-too-large", "outside.ridge"],
  ];

  test.each(cases)("%s", (_, input, code, path) => {
    const bad = spec({ ...band, ...input });
    const failure = failureOf(() => buildProfile(bad, 8.5, 0.01));
    expect(failure).toMatchObject({ code, path: `profile.${path}`, problems: { length: 1 } });
    const [part, field] = path.split(".") as ["bore" | "outside", string];
    expect(failure.value).toBe(Reflect.get(bad[part], field));
    const largest = Number(/to ([\d.]+) mm$/.exec(failure.allowed ?? "")?.[1]);
    const withValue = (value: number): ProfileSpec => ({ ...bad, [part]: { ...bad[part], [field]: value } });
    expect(buildProfile(withValue(largest), 8.5, 0.01).seatLength).toBeGreaterThan(0);
    expect(failureOf(() => buildProfile(withValue(largest + 0.0015), 8.5, 0.01)).path).toMatch(/^profile/);
  });

  test("closed forms: half a rail, the wall's height, the rail's inner wall", () => {
    const allowed = (input: object) => failureOf(() => buildProfile(spec({ ...band, ...input }), 8.5, 0.01)).allowed;
    expect(allowed({ outside: { form: "channel", rail: 0.9, edge: 0.5 } })).toBe("0 to 0.45 mm");
    expect(allowed({ bore: { form: "flat", edge: 0.3 }, outside: { form: "flat", edge: 2 } })).toBe("0 to 1.5 mm");
    expect(allowed({ outside: { form: "channel", depth: 0.5, edge: 0.2, root: 0.6 } })).toBe("0 to 0.3 mm");
  });

  test("several radii at once are reported together", () => {
    const both = spec({ ...band, bore: { form: "flat", edge: 2.9 }, outside: { form: "flat", edge: 2.9 } });
    const { problems } = failureOf(() => buildProfile(both, 8.5, 0.01));
    expect(problems.map(({ path }) => path)).toEqual(["profile.outside.edge", "profile.bore.edge"]);
  });

  test("a band too narrow for any seat says so", () => {
    const sharp = { form: "flat", edge: 0 };
    const narrow = spec({ width: 0.005, thickness: 1.8, bore: sharp, outside: sharp });
    expect(failureOf(() => buildProfile(narrow, 8.5, 0.01))).toMatchObject({
      code: "seat-too-narrow",
      path: "profile.width",
      value: 0.005,
    });
  });

  test("an edge of half the width leaves no seat, and the largest that does is named", () => {
    const round = spec({ width: 4, thickness: 3, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 2 } });
    expect(failureOf(() => buildProfile(round, 8.5, 0.01))).toMatchObject({
      code: "fillet-too-large",
      allowed: "0 to 1.995 mm",
    });
  });

  test("a band too thin names the least thickness", () => {
    const thin = spec({
      width: 6,
      thickness: 0.05,
      bore: { form: "flat", edge: 0 },
      outside: { form: "flat", edge: 0 },
    });
    expect(failureOf(() => buildProfile(thin, 8.5, 0.01))).toMatchObject({
      code: "thickness-too-small",
      path: "profile.thickness",
      allowed: "0.1 mm or more",
    });
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 0, -1])("a bore radius of %d is refused", (radius) => {
    const failure = failureOf(() => buildProfile(spec({ ...band, outside: { form: "flat" } }), radius, 0.01));
    expect(failure.code).toBe("profile-not-finite");
  });

  test.each([Number.NaN, 0, -1, 1e-12, Number.POSITIVE_INFINITY])("a tolerance of %d is refused", (tolerance) => {
    const failure = failureOf(() => buildProfile(spec({ ...band, outside: { form: "flat" } }), 8.5, tolerance));
    expect(failure).toMatchObject({ code: "profile-not-finite", path: "tolerance" });
  });

  test("a number that is none, put past the schema, is refused", () => {
    const good = spec({ ...band, outside: { form: "domed" } });
    const bad = { ...good, outside: { ...good.outside, rise: Number.NaN } } as ProfileSpec;
    expect(failureOf(() => buildProfile(bad, 8.5, 0.01)).code).toBe("profile-not-finite");
  });

  test("whatever fails, fails as an AnnuletError, and a range it names works", () => {
    let failed = 0;
    fc.assert(
      fc.property(anySpec, boreRadius, (input, radius) => {
        const parsed = spec(input);
        try {
          buildProfile(parsed, radius, 0.01);
        } catch (error) {
          expect(error).toBeInstanceOf(AnnuletError);
          const { problems, allowed, path } = error as AnnuletError;
          const largest = /to ([\d.]+) mm$/.exec(allowed ?? "")?.[1];
          if (problems.length > 1 || largest === undefined || path === undefined) return;
          failed++;
          const [, part, field] = path.split(".") as [string, "bore" | "outside", string];
          buildProfile({ ...parsed, [part]: { ...parsed[part], [field]: Number(largest) } }, radius, 0.01);
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
    expect(failed).toBeGreaterThan(20);
  });
});

test("unknown keys and wrong forms are refused by the schema", () => {
  expect(() => spec({ width: 6, thickness: 2, outside: { form: "flat", egde: 0.2 } })).toThrow(/egde/);
  expect(() => spec({ width: 6, thickness: 2, outside: { form: "round" } })).toThrow();
  expect(() => spec({ width: -6, thickness: 2, outside: { form: "flat" } })).toThrow();
  expect(() => spec({ width: 6, thickness: 2, outside: { form: "free" } })).toThrow(/path or points/);
});
