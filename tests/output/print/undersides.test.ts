import { describe, expect, it } from "vitest";
import { radians } from "../../../src/base/units.js";
import { concatMeshes, type Mesh } from "../../../src/mesh/mesh.js";
import { layDown } from "../../../src/output/print/lay-down.js";
import { findUndersides } from "../../../src/output/print/undersides.js";
import { failureOf } from "../../support/failure-of.js";
import { box, sphere, torus } from "../../support/meshes.js";

const tilted = (mesh: Mesh, tilt: number) => layDown(mesh, { stance: "tilted", tilt });

describe("undersides", () => {
  it("a cube on the plate has none: it rests on its face", () => {
    const { area, share, resting, places, steep } = findUndersides(box());
    expect({ area, share, resting, places }).toEqual({ area: 0, share: 0, resting: 1, places: [] });
    expect(steep).toEqual(new Uint8Array(12));
  });

  it("a box that hangs free is one place, with its middle and its height", () => {
    const { area, places, steep } = findUndersides(concatMeshes([box(), box([2, 1, 1], [4, 0, 3])]));
    expect(area).toBe(2);
    expect(places).toEqual([{ at: [5, 0.5, 3], area: 2, height: 3 }]);
    expect(steep.reduce((sum, one) => sum + one, 0)).toBe(2);
  });

  // Tilted by φ, one face leans by 90° − φ from the upright and the other by φ.
  it.each([
    [30, 45, 1],
    [30, 25, 2],
    [30, 61, 0],
    [45, 45, 0],
    [45, 44.99, 2],
    [60, 45, 1],
  ])("a cube tilted by %d° has, steeper than %d°, %d faces", (tilt, support, faces) => {
    const { area, share, resting, places } = findUndersides(tilted(box(), tilt), { support });
    expect(area).toBeCloseTo(faces, 12);
    expect(share).toBeCloseTo(faces / 6, 12);
    expect(resting).toBe(0);
    // Both faces meet in the edge it stands on.
    expect(places.length).toBe(Math.min(faces, 1));
  });

  // Lying, the tube's lower part between −180° + α and −α: (π − 2α) / 2π of its area, by Pappus.
  it.each([30, 45, 60])("a lying torus has the share beyond %d° that Pappus gives", (support) => {
    const { area, share, places } = findUndersides(torus(9, 1.5, 90, 360), { support });
    const expected = (Math.PI - 2 * radians(support)) / (2 * Math.PI);
    expect(share).toBeCloseTo(expected, 3);
    expect(area).toBeCloseTo(expected * 4 * Math.PI ** 2 * 9 * 1.5, -0.5);
    expect(places).toHaveLength(1);
    expect(places[0].height).toBeLessThan(1e-9);
  });

  // Archimedes, On the Sphere and Cylinder I: a cap's area goes with its height, so the share is (1 − sin α) / 2.
  it.each([30, 45, 60])("a ball has the share beyond %d° that Archimedes gives", (support) => {
    const { share } = findUndersides(sphere(2, 720, 90), { support });
    expect(share).toBeCloseTo((1 - Math.sin(radians(support))) / 2, 2);
  });

  it("a standing torus hangs over below and in its bore", () => {
    const { places } = findUndersides(layDown(torus(9, 1.5, 180, 60), { stance: "standing", tilt: 30 }));
    expect(places).toHaveLength(2);
    const [below, bore] = places;
    expect(below.height).toBeLessThan(0.001);
    // The bore's highest line lies R − r above the middle, which is R + r up.
    expect(bore.at[2]).toBeGreaterThan(9 + 1.5);
    expect(bore.at[2]).toBeLessThan(18);
  });

  it("refuses an angle at which nothing could be steep", () => {
    expect(failureOf(() => findUndersides(box(), { support: 90 })).problems).toMatchObject([
      { code: "option-invalid", path: "support", allowed: "a number, 0 to 89 degrees" },
    ]);
  });
});
