// Covers: src/output/picture/studio.ts
import { describe, expect, it } from "vitest";
import { addLight, MATT, makeLightMap } from "../../../src/output/picture/light-map.js";
import { studioLight } from "../../../src/output/picture/studio.js";

/** Directions spread over the sphere, poles and axes among them. */
const DIRECTIONS = [
  ...Array.from({ length: 200 }, (_, i) => {
    const y = 1 - (2 * i + 1) / 200;
    const level = Math.sqrt(1 - y * y);
    return [level * Math.cos(2.4 * i), y, level * Math.sin(2.4 * i)] as const;
  }),
  [0, 1, 0],
  [0, -1, 0],
  [1, 0, 0],
  [0, 0, -1],
] as const;

function look(map: ReturnType<typeof makeLightMap>, level: number, [x, y, z]: readonly [number, number, number]) {
  const out = new Float64Array(3);
  addLight(map, level, x, y, z, 1, out);
  return out;
}

describe("the map of light", () => {
  it("gives even light evenly at every level, over its seams too", () => {
    const map = makeLightMap((_x, _y, _z, out) => out.set([0.5, 1, 2]));
    for (let level = 0; level <= MATT; level++) {
      for (const direction of DIRECTIONS) {
        const [r, g, b] = look(map, level, direction);
        expect(r).toBeCloseTo(0.5, 5);
        expect(g).toBeCloseTo(1, 5);
        expect(b).toBeCloseTo(2, 5);
      }
    }
  });

  it("gives each direction back as it was put in", () => {
    const map = makeLightMap((x, y, z, out) => out.set([x, y, z]));
    for (const direction of DIRECTIONS) {
      const light = look(map, 0, direction);
      for (const k of [0, 1, 2]) expect(light[k]).toBeCloseTo(direction[k], 1.8);
    }
  });

  it("blurs by its lobe: the mean of the direction over cosⁿ is (n + 1) / (n + 2) of it", () => {
    // ∫ cosⁿ⁺¹ / ∫ cosⁿ over the hemisphere, by the surface element sin θ dθ.
    const map = makeLightMap((x, y, z, out) => out.set([x, y, z]));
    [260, 40, 7, 1].forEach((exponent, i) => {
      const factor = (exponent + 1) / (exponent + 2);
      for (const direction of DIRECTIONS) {
        const light = look(map, i + 1, direction);
        for (const k of [0, 1, 2]) expect(Math.abs(light[k] - factor * direction[k])).toBeLessThan(0.05);
      }
    });
  });

  it("has a studio that is bright above and dim below the horizon's far side, and nowhere dark or endless", () => {
    const out = new Float64Array(3);
    for (const [x, y, z] of DIRECTIONS) {
      studioLight(x, y, z, out);
      for (const value of out) {
        expect(value).toBeGreaterThan(0.02);
        expect(value).toBeLessThan(4);
      }
    }
  });
});
