import { describe, expect, it } from "vitest";
import { makeCamera } from "../../../src/output/picture/camera.js";
import { makeGround } from "../../../src/output/picture/ground.js";
import { views } from "../../../src/output/picture/views.js";
import { box, torus } from "../../support/meshes.js";

const BALL = { centre: [0, 0, 0], radius: 10 } as const;

function cameraOf(view: keyof typeof views) {
  return makeCamera({ view: views[view], width: 100, height: 100, zoom: 1, ...BALL });
}

describe("the ground", () => {
  it("lies under the lowest point of either stance", () => {
    const ring = torus(8, 2, 64, 32);
    expect(makeGround(ring, cameraOf("lying"), BALL).level).toBeCloseTo(-2, 6);
    expect(makeGround(ring, cameraOf("front"), BALL).level).toBeCloseTo(-10, 6);
  });

  it("is dark under the ring, lighter outward, and untouched far away", () => {
    const { lightAt } = makeGround(torus(8, 2, 64, 32), cameraOf("lying"), BALL);
    const beneath = lightAt(8, 0, -2);
    expect(beneath).toBeLessThan(0.4);
    expect(lightAt(0, 0, -2)).toBeGreaterThan(beneath);
    const outward = [10.5, 12, 14, 17, 20].map((x) => lightAt(0, x, -2));
    expect(outward).toEqual([...outward].sort((p, q) => p - q));
    expect(lightAt(60, 0, -2)).toBe(1);
  });

  it("loses as much light to a small plate as the plate covers, wherever it hangs", () => {
    // Every light throws a shadow of the plate's own area, blurred: what is lost in all is the same at any height.
    const lost = (height: number) => {
      const plate = box([3, 3, 0.05], [-1.5, -1.5, height]);
      const floor = box([0.01, 0.01, 0.01], [0, 0, -10]);
      const mesh = {
        positions: Float64Array.from([...floor.positions, ...plate.positions]),
        triangles: Uint32Array.from([...floor.triangles, ...plate.triangles.map((i) => i + 8)]),
      };
      const { lightAt } = makeGround(mesh, cameraOf("lying"), BALL);
      let sum = 0;
      for (let x = -24; x < 24; x += 0.25)
        for (let y = -24; y < 24; y += 0.25) sum += (1 - lightAt(x, y, -10)) * 0.0625;
      return sum;
    };
    const low = lost(-8);
    expect(low).toBeGreaterThan(0.6 * 9);
    expect(low).toBeLessThan(1.2 * 9);
    expect(lost(-5) / low).toBeGreaterThan(0.85);
    expect(lost(-5) / low).toBeLessThan(1.05);
  });
});
