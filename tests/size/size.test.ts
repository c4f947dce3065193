// Covers: src/design/size.ts, src/size/bore-range.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { sizeSchema } from "../../src/design/size.js";
import type { SizeSystemOptions } from "../../src/size/catalogue.js";
import { resolveSize, type SizeSpec } from "../../src/size/size.js";
import type { SizeSystem } from "../../src/size/size-system.js";
import { sizeTable } from "../../src/size/size-table.js";
import { failureOf } from "../support/failure-of.js";

const SEED = 20261125;

describe("resolveSize", () => {
  it("turns a label into the bore and writes the label as the system does", () => {
    expect(resolveSize({ system: "uk", value: "n 1/2" })).toEqual({
      circumference: 54.375,
      diameter: 54.375 / Math.PI,
      system: "uk",
      label: "N½",
      // 53.8 to 68.5 and 54.35 to 69.43 mm from N to Z in two charts, straight between.
      span: [54.375, 54.35 + (0.5 * (69.43 - 54.35)) / 12],
    });
  });

  it("keeps a label between the steps as it was given", () => {
    expect(resolveSize({ system: "us", value: 7.3 }).label).toBe("7.3");
  });

  it("takes a diameter or a circumference, and D = C / π", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 60, noNaN: true }), (diameter) => {
        const byDiameter = resolveSize({ diameter });
        expect(byDiameter).toEqual({ diameter, circumference: Math.PI * diameter });
        const byCircumference = resolveSize({ circumference: byDiameter.circumference });
        expect(byCircumference.diameter).toBeCloseTo(diameter, 10);
      }),
      { seed: SEED },
    );
  });

  it.each([
    [{ diameter: 4.9 }, "size-out-of-range", "size.diameter"],
    [{ diameter: 60.1 }, "size-out-of-range", "size.diameter"],
    [{ diameter: Number.NaN }, "size-out-of-range", "size.diameter"],
    [{ diameter: "17" }, "size-out-of-range", "size.diameter"],
    [{ circumference: 15 }, "size-out-of-range", "size.circumference"],
    [{ circumference: Number.POSITIVE_INFINITY }, "size-out-of-range", "size.circumference"],
    [{ system: "us", value: 40 }, "size-unknown", "size.value"],
    [{ system: "us", value: undefined }, "size-unknown", "size.value"],
    [{ system: "eu", value: 54 }, "size-system-unknown", "size.system"],
    [{}, "size-unclear", "size"],
    [{ diameter: 17, circumference: 54 }, "size-unclear", "size"],
    [{ system: "us", value: 7, diameter: 17 }, "size-unclear", "size"],
  ])("refuses %j as %s at %s", (size, code, path) => {
    expect(() => resolveSize(size as SizeSpec)).toThrow(expect.objectContaining({ code, path }));
  });

  it("takes size systems of the user's own", () => {
    const knuckles: SizeSystem = {
      name: "knuckles",
      title: "Knuckles",
      source: "this test",
      labels: "small or large",
      example: "small",
      circumferenceOf: (label) => (label === "small" ? 50 : 60),
      labelOf: (circumference) => (circumference < 55 ? "small" : "large"),
    };
    expect(resolveSize({ system: "knuckles", value: "large" }, { systems: [knuckles] })).toMatchObject({
      circumference: 60,
      label: "large",
    });
  });
});

describe("sizeSchema", () => {
  it.each<unknown>([
    { system: "iso", value: 55 },
    { system: "uk", value: "N½" },
    { diameter: 17.5 },
    { circumference: 55 },
    { diameter: 5 },
    { circumference: 60 * Math.PI },
  ])("accepts %j, and it resolves", (size) => {
    expect(resolveSize(sizeSchema.parse(size)).circumference).toBeGreaterThan(0);
  });

  it.each([
    {},
    null,
    "iso 55",
    { system: "eu", value: 55 },
    { system: "iso" },
    { system: "iso", value: true },
    { diameter: 4 },
    { diameter: 17, circumference: 54 },
    { circumference: 200 },
    { system: "iso", value: 55, unit: "mm" },
  ])("refuses %j", (size) => {
    expect(sizeSchema.safeParse(size).success).toBe(false);
  });

  it("describes every field in the JSON Schema, with unit or range", () => {
    const json = z.toJSONSchema(sizeSchema) as {
      anyOf: { additionalProperties: boolean; properties: Record<string, { description?: string }> }[];
    };
    expect(json.anyOf.flatMap((way) => Object.keys(way.properties))).toEqual([
      "system",
      "value",
      "diameter",
      "circumference",
    ]);
    for (const way of json.anyOf) {
      expect(way.additionalProperties).toBe(false);
      for (const field of Object.values(way.properties)) expect(field.description).toMatch(/mm|iso/);
    }
  });
});

describe("options of sizes", () => {
  it.each<[string, unknown, string]>([
    ["null", null, "option-invalid"],
    ["a misspelt name", { system: [] }, "option-unknown"],
    ["no list", { systems: 3 }, "option-invalid"],
    ["a list of something else", { systems: ["iso"] }, "option-invalid"],
  ])("that are %s are refused", (_, options, code) => {
    const given = options as SizeSystemOptions;
    for (const ask of [
      () => resolveSize({ system: "iso", value: 54 }, given),
      () => resolveSize({ diameter: 17 }, given),
      () => sizeTable(54, given),
    ]) {
      expect(failureOf(ask).code).toBe(code);
    }
  });
});
