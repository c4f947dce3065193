// Covers: src/band/taper-limits.ts, src/band/taper.ts, src/band/tapered-band.ts, src/band/tapered-sections.ts
// Covers: src/design/profile/taper.ts
/** Covers `taper.ts`, `taper-limits.ts`, `tapered-sections.ts` and `tapered-band.ts` too, through the bands that they make. */
import { describe, expect, it } from "vitest";
import { makeBand } from "../../src/band/make-band.js";
import { buildOutline } from "../../src/band/profile/outline.js";
import { polygonArea } from "../../src/base/math/polygon.js";
import { radians, TURN } from "../../src/base/units.js";
import { failureOf, spec } from "./profile/specs.js";

const BORE = 8.75;
const TOLERANCE = 0.005;
const sizes = { width: 8, thickness: 2.2 };
const taper = { width: 4, thickness: 1.6 };

const FORMS = [
  { form: "flat" },
  { form: "domed", rise: 0.5 },
  { form: "channel", rail: 0.9, depth: 0.5, crown: 0.1, root: 0.1 },
  { form: "bevelled", bevel: 1, drop: 0.4 },
  { form: "concave", dip: 0.3 },
  { form: "knife", rise: 0.6 },
  {
    form: "free",
    points: [
      [-4, 1.4],
      [-1, 2.2],
      [1, 2.2],
      [4, 1.4],
    ],
  },
] as const;

describe.each(FORMS)("a band that tapers: $form", (outside) => {
  // A drawing has the heights that it has.
  const thick = outside.form === "free" ? { width: 4 } : taper;
  const profile = spec({ ...sizes, bore: { form: "comfort", rise: 0.2 }, outside, taper: thick });
  const band = makeBand(profile, BORE, TOLERANCE);

  it("has between two drawn sections the one that its form would draw there, to 2e-5 mm", () => {
    for (let i = 0; i < 97; i++) {
      const angle = 0.003 + (i * TURN) / 97;
      const exact = buildOutline({ ...profile, ...band.sizesAt(angle) }, BORE, TOLERANCE);
      const section = band.sectionAt(angle);
      expect(section.outline.length).toBe(exact.outline.length);
      section.outline.forEach((segment, k) => {
        const other = exact.outline[k];
        if (segment.kind === "line" && other.kind === "line") {
          expect(Math.hypot(segment.from[0] - other.from[0], segment.from[1] - other.from[1])).toBeLessThan(2e-5);
          expect(Math.hypot(segment.to[0] - other.to[0], segment.to[1] - other.to[1])).toBeLessThan(2e-5);
        } else if (segment.kind === "arc" && other.kind === "arc") {
          expect(Math.hypot(segment.centre[0] - other.centre[0], segment.centre[1] - other.centre[1])).toBeLessThan(
            2e-4,
          );
          const middle = (arc: typeof other) => {
            const at = arc.start + arc.sweep / 2;
            return [arc.centre[0] + arc.radius * Math.cos(at), arc.centre[1] + arc.radius * Math.sin(at)];
          };
          const [a, b] = [middle(segment), middle(other)];
          expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThan(2e-5);
        }
      });
      expect(section.boreRadius).toBe(BORE);
      expect(section.polyline.length).toBe(band.polyline.length);
      expect(polygonArea(section.polyline)).toBeGreaterThan(0);
    }
  });

  it("is alike on both sides of the top", () => {
    for (const away of [0.1, 1, 2.3]) {
      const [one, other] = [1, -1].map((side) => band.sectionAt(TURN / 4 + side * away).polyline);
      one.forEach(([w, r], i) => {
        expect(Math.hypot(w - other[i][0], r - other[i][1])).toBeLessThan(1e-12);
      });
    }
  });
});

describe("a taper", () => {
  const band = (more: object, outside: object = { form: "channel", rail: 0.9, depth: 0.5 }) =>
    makeBand(spec({ ...sizes, outside, taper: more }), BORE, TOLERANCE);

  it("given on one side is the same on the other; given on both, each as given", () => {
    const one = band({ width: 4, between: [{ angle: 0, width: 7 }] });
    expect(one.sizesAt(0).width).toBeCloseTo(7, 12);
    expect(one.sizesAt(radians(180)).width).toBeCloseTo(7, 12);
    const left = band({ width: 4, between: [{ angle: 150, width: 7 }] });
    expect(left.sizesAt(radians(150)).width).toBeCloseTo(7, 12);
    expect(left.sizesAt(radians(30)).width).toBeCloseTo(7, 12);
    const both = band({
      width: 4,
      between: [
        { angle: 0, width: 7 },
        { angle: 180, width: 5 },
      ],
    });
    expect(both.sizesAt(0).width).toBeCloseTo(7, 12);
    expect(both.sizesAt(radians(180)).width).toBeCloseTo(5, 12);
    expect(both.sizesAt(radians(180)).thickness).toBe(2.2);
  });

  it("bends most in the corners of its top: r″ − r and w″ of the smooth step there", () => {
    const flat = makeBand(
      spec({ ...sizes, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 }, taper }),
      BORE,
      TOLERANCE,
    );
    // 3t² − 2t³ over half a turn begins with the second derivative 6 / π².
    const begins = 6 / Math.PI ** 2;
    const [thinner, narrower] = [(2.2 - 1.6) * begins, ((8 - 4) / 2) * begins];
    const most = Math.hypot(BORE + 2.2 + thinner, narrower);
    // Second differences over a degree miss the step's third derivative, 4t of 6 at one degree.
    expect(Math.abs(flat.bend.radius - most)).toBeLessThan(0.01 * (thinner + narrower));
  });

  it("that is none is a band that is the same all round", () => {
    for (const none of [{}, sizes, { width: 8, between: [{ angle: 30, thickness: 2.2 }] }]) {
      expect(band(none).revolved).toBe(true);
    }
  });

  it("may widen towards the back", () => {
    expect(band({ width: 10 }).sectionAt(radians(270)).width).toBe(10);
  });

  it("too far is an error with the angle and the least that would do", () => {
    const narrow = failureOf(() => band({ width: 1.5 }));
    expect(narrow).toMatchObject({ code: "taper-too-far", path: "profile.taper.width", value: 1.5 });
    expect(narrow.message).toContain("at 270°");
    const least = Number(/at least ([0-9.]+) mm at 270°/.exec(String(narrow.allowed))?.[1]);
    expect(() => band({ width: least })).not.toThrow();
    expect(failureOf(() => band({ width: least - 0.01 })).code).toBe("taper-too-far");

    const thin = failureOf(() => band({ thickness: 0.55 }));
    expect(thin).toMatchObject({ code: "taper-too-far", path: "profile.taper.thickness" });
    const enough = Number(/at least ([0-9.]+) mm/.exec(String(thin.allowed))?.[1]);
    expect(() => band({ thickness: enough })).not.toThrow();
  });

  it("names the place between that is wrong, not the back", () => {
    const failure = failureOf(() => band({ between: [{ angle: 20, width: 1 }] }));
    expect(failure.message).toContain("at 20°");
  });

  it("of a drawing whose height is not the thickness is refused", () => {
    const outside = {
      form: "free",
      points: [
        [-4, 1.4],
        [0, 2.2],
        [4, 1.4],
      ],
    };
    expect(failureOf(() => band({ thickness: 1.6 }, outside)).code).toBe("taper-too-far");
  });
});
