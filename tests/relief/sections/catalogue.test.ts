// Covers: src/relief/sections/*, src/design/sections/*
import { describe, expect, it } from "vitest";
import { type SectionSpec, sectionSchema } from "../../../src/design/sections/section.js";
import { drawSection, SECTIONS } from "../../../src/relief/sections/index.js";
import { heightAt } from "../../../src/relief/sections/section-form.js";
import { failureOf } from "../../flat/strips.js";

const REACH = 1.5;
const TOLERANCE = 0.002;
const frame = { reach: () => REACH, tolerance: TOLERANCE, path: "section" };
const draw = (spec: object) => drawSection(sectionSchema.parse(spec), frame);

const SPECS: readonly (Record<string, unknown> & { readonly form: SectionSpec["form"] })[] = [
  { form: "flat", height: 0.6 },
  { form: "flat", height: 0.6, round: 0.2, draft: 8 },
  { form: "flat", height: 0.6, bevel: 0.2, draft: 8 },
  { form: "flat", height: 0.6, bevel: 0.6, draft: 8 },
  { form: "domed", height: 0.6 },
  { form: "domed", height: 0.9, wall: 0.3, reach: 0.7, draft: 8 },
  { form: "domed", height: 0.9, wall: 0.3, radius: 0.15 },
  { form: "domed", height: 0.9, wall: 0.3, radius: 0.15, draft: 8 },
  { form: "ridge", height: 0.6 },
  { form: "ridge", height: 0.6, wall: 0.2, radius: 0.15 },
  { form: "ridge", height: 0.6, wall: 0.2, radius: 0.15, nose: 0.3, draft: 8 },
  { form: "ridge", height: 0.6, wall: 0.2, nose: 0.3, draft: 8 },
  { form: "ridge", slope: 50, nose: 0.4 },
  { form: "hollow", height: 0.6, dip: 0.3 },
  { form: "hollow", height: 0.6, dip: 0.3, round: 0.1, rim: 0.2, reach: 0.9, draft: 8 },
];

it("every form is tried", () => {
  expect(new Set(SPECS.map(({ form }) => form))).toEqual(new Set(Object.keys(SECTIONS)));
});

describe.each(SPECS)("%o", (spec) => {
  const line = draw(spec);

  it("goes inwards from its foot, nowhere below the seat, and stays within the reach", () => {
    line.forEach(([d, h], i) => {
      if (i > 0) expect(d).toBeGreaterThan(line[i - 1][0]);
      expect(h).toBeGreaterThanOrEqual(0);
    });
    expect(line[line.length - 1][0]).toBeLessThanOrEqual(REACH + 1e-12);
  });

  it("has its height, and a drafted wall that leans by its angle", () => {
    const top = Math.max(...line.map(([, h]) => h));
    if (spec.height !== undefined) expect(top).toBeCloseTo(spec.height as number, 12);
    if (spec.draft === undefined) return;
    const [[d0, h0], [d1, h1]] = line;
    expect(h0).toBe(0);
    const wall = spec.form === "domed" || spec.form === "ridge" ? (spec.wall as number) : 0.6;
    expect(d0).toBeCloseTo(-wall * Math.tan((8 * Math.PI) / 180), 12);
    // A bevel as high as the region leaves no wall.
    if (spec.bevel !== 0.6) expect((d1 - d0) / (h1 - h0)).toBeCloseTo(Math.tan((8 * Math.PI) / 180), 9);
  });
});

describe("curves of sections", () => {
  it("a dome is an arc of a circle, level at its end", () => {
    const [length, rise] = [REACH, 0.6];
    const radius = (length ** 2 + rise ** 2) / (2 * rise);
    const line = draw({ form: "domed", height: rise });
    for (const [d, h] of line) expect(Math.hypot(d - length, h - rise + radius)).toBeCloseTo(radius, 12);
    expect(heightAt(line, 9)).toBe(line[line.length - 1][1]);
  });

  it("a nose touches straight flanks of one slope", () => {
    const line = draw({ form: "ridge", height: 0.6, wall: 0.2, nose: 0.3 });
    const [[, h0], [d1, h1]] = line;
    const slope = Math.atan2(h1 - h0, d1);
    // The nose's circle has its centre over the middle, 0.3 below the top.
    for (const [d, h] of line.slice(1)) expect(Math.hypot(d - REACH, h - 0.3)).toBeCloseTo(0.3, 12);
    expect(Math.atan2(REACH - d1, h1 - 0.3)).toBeCloseTo(slope, 12);
    expect(heightAt(line, d1 / 2)).toBeCloseTo((h0 + h1) / 2, 12);
  });

  it("a drafted rounding is tangent to its wall and its top", () => {
    const line = draw({ form: "flat", height: 0.6, round: 0.2, draft: 8 });
    const centre = [line[line.length - 1][0], 0.4];
    for (const [d, h] of line.slice(1)) expect(Math.hypot(d - centre[0], h - centre[1])).toBeCloseTo(0.2, 12);
    const [[d0, h0], [d1, h1]] = line;
    const across = (d1 - d0) * (centre[0] - d1) + (h1 - h0) * (centre[1] - h1);
    expect(across).toBeCloseTo(0, 12);
  });
});

describe("an edge radius", () => {
  const turnsOf = (line: ReturnType<typeof draw>) =>
    line.slice(2).map((point, i) => {
      const [a, b] = [line[i], line[i + 1]];
      const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], point[0] - b[0], point[1] - b[1]];
      return Math.atan2(uy * vx - ux * vy, ux * vx + uy * vy);
    });

  it.each([
    { form: "domed", height: 0.9, wall: 0.3, draft: 8 },
    { form: "ridge", height: 0.6, wall: 0.3, draft: 8 },
    { form: "ridge", height: 0.6, wall: 0.3, nose: 0.4, draft: 8 },
  ])("of %o is a true fillet: no corner is left, and its arc touches the wall and what rises", (spec) => {
    const radius = 0.2;
    const [sharp, round] = [draw(spec), draw({ ...spec, radius })];
    const step = 2 * Math.acos(1 - TOLERANCE / radius);
    expect(Math.max(...turnsOf(sharp).slice(0, 2))).toBeGreaterThan(2 * step);
    const corners = turnsOf(round);
    expect(
      Math.max(...(spec.form === "ridge" && spec.nose === undefined ? corners.slice(0, -1) : corners)),
    ).toBeLessThan(step + 1e-9);
    // The arc's centre lies one radius from the wall's line, on its inner side.
    const lean = (8 * Math.PI) / 180;
    const [first, second] = [round[1], round[2]];
    const centre = [first[0] + radius * Math.cos(lean), first[1] - radius * Math.sin(lean)];
    expect(Math.hypot(second[0] - centre[0], second[1] - centre[1])).toBeCloseTo(radius, 9);
    // Behind the edge nothing changes.
    expect(heightAt(round, 1)).toBeCloseTo(heightAt(sharp, 1), 2);
    expect(Math.max(...round.map(([, h]) => h))).toBeCloseTo(spec.height, 9);
  });
});

describe("a section that does not fit", () => {
  it.each<[string, object, string, number]>([
    ["a dome steeper than a quarter circle", { form: "domed", height: 2, wall: 0.2 }, "height", 1.7],
    ["a nose wider than the ridge", { form: "ridge", slope: 60, nose: 2 }, "nose", 1.732],
    ["an edge rounder than the wall is high", { form: "ridge", height: 1, wall: 0.05, radius: 0.4 }, "radius", 0.091],
    ["an edge without a wall", { form: "ridge", height: 1, radius: 0.1 }, "radius", 0],
    ["a hollow down to the seat", { form: "hollow", height: 0.4, dip: 0.5 }, "dip", 0.4],
    ["a hollow that is too narrow", { form: "hollow", height: 1, dip: 0.9, rim: 1 }, "dip", 0.5],
  ])("%s names the largest that would", (_, spec, field, largest) => {
    const error = failureOf(() => draw(spec));
    expect([error.code, error.path]).toEqual(["section-misfit", `section.${field}`]);
    const most = Number(/([\d.]+) mm$/.exec(error.allowed ?? "")?.[1]);
    expect(most).toBeCloseTo(largest, 2);
    if (field !== "dip") expect(() => draw({ ...spec, [field]: most })).not.toThrow();
    expect(failureOf(() => draw({ ...spec, [field]: most + 0.002 })).code).toBe("section-misfit");
  });

  it("an edge higher than the region", () => {
    expect(failureOf(() => draw({ form: "flat", height: 0.4, bevel: 0.5 }))).toMatchObject({
      code: "bevel-too-large",
      path: "section.bevel",
      allowed: "0 to 0.4 mm",
    });
    expect(failureOf(() => draw({ form: "hollow", height: 0.4, dip: 0.1, round: 0.5 })).code).toBe("round-too-large");
  });
});
