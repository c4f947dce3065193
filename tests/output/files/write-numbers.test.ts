import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FLOAT32_BYTES, writeFloat32, writeInteger } from "../../../src/output/files/write-numbers.js";

function text(value: number): string {
  const bytes = new Uint8Array(64).fill(64);
  const end = writeFloat32(bytes, 1, value);
  expect(end - 1).toBeLessThanOrEqual(FLOAT32_BYTES);
  expect([bytes[0], bytes[end]]).toEqual([64, 64]);
  return String.fromCharCode(...bytes.subarray(1, end));
}

/** Significant digits of a decimal: leading and trailing zeros, sign, point and exponent left aside. */
function digits(decimal: string): number {
  const [mantissa] = decimal.replace("-", "").split("e");
  return mantissa.replace(".", "").replace(/^0+/, "").replace(/0+$/, "").length;
}

describe("writeFloat32", () => {
  it.each([
    [0, "0"],
    [-0, "0"],
    [1, "1"],
    [-12, "-12"],
    [0.1, "0.1"],
    [16.51, "16.51"],
    [-0.001, "-0.001"],
    [8388608.5, "8388608"],
    [16777216, "16777216"],
    [1e-7, "1e-7"],
    [1e20, "100000000000000000000"],
    [2 ** -149, "1e-45"],
  ])("writes %f as %s", (value, expected) => {
    expect(text(value)).toBe(expected);
  });

  it("reads back as the same float32, in as few digits as the engine's own search finds", () => {
    const anyFloat = fc.float({ noNaN: true, noDefaultInfinity: true });
    const ringSized = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.oneof(anyFloat, ringSized), (value) => {
        const float = Math.fround(value) + 0;
        const written = text(value);
        expect(Math.fround(Number(written))).toBe(float);
        let fewest = 1;
        while (Math.fround(Number(float.toPrecision(fewest))) !== float) fewest++;
        // Whole numbers are written out in full.
        if (float !== 0 && !Number.isInteger(float)) expect(digits(written)).toBe(digits(float.toPrecision(fewest)));
      }),
      { seed: 20261125, numRuns: 20_000 },
    );
  });
});

describe("writeInteger", () => {
  it("writes counts as String does", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 32 - 1 }), (value) => {
        const bytes = new Uint8Array(16);
        expect(String.fromCharCode(...bytes.subarray(0, writeInteger(bytes, 0, value)))).toBe(String(value));
      }),
      { seed: 20261125 },
    );
  });
});
