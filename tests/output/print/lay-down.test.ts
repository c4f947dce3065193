import { describe, expect, it } from "vitest";
import { radians } from "../../../src/base/units.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { meshBounds } from "../../../src/mesh/bounds.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { layDown } from "../../../src/output/print/lay-down.js";
import { box, torus } from "../../support/meshes.js";

const [RADIUS, TUBE] = [9, 1.5];
const ring = torus(RADIUS, TUBE, 720, 360);

describe("laying a ring down", () => {
  it("moves nothing of a ring that stays as it was built", () => {
    expect(layDown(ring, { stance: "built", tilt: 30 })).toBe(ring);
  });

  // A torus reaches R sin φ + r from its middle along a direction that leans by φ from its plane's normal.
  it.each([
    ["lying", 30, 0],
    ["standing", 30, 90],
    ["tilted", 0, 0],
    ["tilted", 17, 17],
    ["tilted", 45, 45],
    ["tilted", 90, 90],
  ] as const)("a torus %s (%d°) is as high as its support function says", (stance, tilt, angle) => {
    const laid = layDown(ring, { stance, tilt });
    const { min, max } = meshBounds(laid);
    expect(min[2]).toBe(0);
    expect(max[2]).toBeCloseTo(2 * (RADIUS * Math.sin(radians(angle)) + TUBE), 3);
    expect(max[0] - min[0]).toBeCloseTo(2 * (RADIUS + TUBE), 9);
    expect(signedVolume(laid) / signedVolume(ring)).toBeCloseTo(1, 12);
    expect(checkSolid(laid)).toMatchObject({ closed: true, genus: 1 });
  });

  it("brings the top of the ring up", () => {
    const top = box([1, 1, 1], [0, 9, 0]);
    const below = box([1, 1, 1], [0, -10, 0]);
    const both = {
      positions: Float64Array.of(...top.positions, ...below.positions),
      triangles: Uint32Array.of(...top.triangles, ...below.triangles.map((vertex) => vertex + 8)),
    };
    const { positions } = layDown(both, { stance: "standing", tilt: 30 });
    expect(Math.min(...[0, 1, 2, 3, 4, 5, 6, 7].map((vertex) => positions[3 * vertex + 2]))).toBe(19);
  });
});
