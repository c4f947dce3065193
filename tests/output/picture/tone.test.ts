import { describe, expect, it } from "vitest";
import { byteTable, fromSrgb, shoulder, shoulderTable, toSrgb } from "../../../src/output/picture/tone.js";

describe("tones", () => {
  it("follow the transfer function of sRGB (IEC 61966-2-1)", () => {
    // 18 % grey is 118, half of white 188, by the standard's formula; black and white are themselves.
    const toByte = byteTable();
    expect([0, 0.18, 0.5, 1].map(toByte)).toEqual([0, 118, 188, 255]);
    for (let i = 0; i <= 255; i++) expect(toByte(fromSrgb(i / 255))).toBe(i);
    expect(toSrgb(0.0031308)).toBeCloseTo(0.0404499, 6);
  });

  it("roll off highlights without a kink, and never fall", () => {
    expect(shoulder(0.5)).toBe(0.5);
    expect(shoulder(3)).toBeLessThan(1);
    const slope = (light: number) => (shoulder(light + 1e-6) - shoulder(light - 1e-6)) / 2e-6;
    expect(slope(0.62)).toBeCloseTo(1, 4);
    const roll = shoulderTable();
    for (let light = 0; light < 5; light += 0.01) {
      expect(roll(light + 0.01)).toBeGreaterThanOrEqual(roll(light));
      expect(roll(light)).toBeCloseTo(shoulder(Math.min(4, light)), 3);
    }
  });
});
