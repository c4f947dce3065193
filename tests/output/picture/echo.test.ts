import { describe, expect, it } from "vitest";
import { followRay, makeEchoGrid } from "../../../src/output/picture/echo.js";
import { box, sphere, torus } from "../../support/meshes.js";

type Vector = readonly [number, number, number];

/** Share of a ray that is caught, and the direction of what catches it. */
function follow(grid: ReturnType<typeof makeEchoGrid>, from: Vector, direction: Vector, normal: Vector) {
  const out = new Float64Array(4);
  followRay(grid, ...from, ...direction, ...normal, out);
  const length = Math.hypot(out[1], out[2], out[3]) || 1;
  return { share: out[0], normal: [out[1] / length, out[2] / length, out[3] / length] };
}

describe("the grid that reflections meet", () => {
  it("lets every ray leave a ball, steep or grazing", () => {
    const grid = makeEchoGrid(sphere(5, 120, 240));
    for (let i = 0; i < 200; i++) {
      const z = 1 - (2 * i + 1) / 200;
      const level = Math.sqrt(1 - z * z);
      const out: Vector = [level * Math.cos(2.4 * i), level * Math.sin(2.4 * i), z];
      const from: Vector = [5 * out[0], 5 * out[1], 5 * out[2]];
      const side = [-out[1], out[0], 0].map((v) => v / level);
      for (const tilt of [0.05, 0.3, 1]) {
        const d = [0, 1, 2].map((k) => tilt * out[k] + Math.sqrt(1 - tilt * tilt) * side[k]) as unknown as Vector;
        expect(follow(grid, from, d, out).share).toBeLessThan(0.02);
      }
    }
  });

  it("catches rays across a bore and tells which way the far wall faces", () => {
    const grid = makeEchoGrid(torus(9, 2, 256, 64));
    for (let i = 0; i < 40; i++) {
      const [x, y] = [Math.cos(i), Math.sin(i)];
      const { share, normal } = follow(grid, [7 * x, 7 * y, 0], [-x, -y, 0], [-x, -y, 0]);
      expect(share).toBeGreaterThan(0.95);
      // The far wall is at (−x, −y) and faces (x, y).
      expect(normal[0] * x + normal[1] * y).toBeGreaterThan(0.98);
      // Upwards it leaves through the open end.
      expect(follow(grid, [7 * x, 7 * y, 0], [-0.3 * x, -0.3 * y, 0.954], [-x, -y, 0]).share).toBeLessThan(0.05);
    }
  });

  it("catches part of a ray at an edge, all of it inside, nothing outside or from behind", () => {
    const [plate, mark] = [box([10, 10, 1]), box([0.1, 0.1, 0.1], [-2, -2, 8])];
    const grid = makeEchoGrid({
      positions: Float64Array.from([...plate.positions, ...mark.positions]),
      triangles: Uint32Array.from([...plate.triangles, ...mark.triangles.map((i) => i + 8)]),
    });
    const down = (x: number) => follow(grid, [x, 5, 6], [0, 0, -1], [0, 0, 1]).share;
    expect(down(-0.6)).toBeLessThan(0.02);
    expect(down(0)).toBeGreaterThan(0.3);
    expect(down(0)).toBeLessThan(0.8);
    expect(down(0.6)).toBeGreaterThan(0.98);
    expect(follow(grid, [5, 5, 0.5], [0, 0, 1], [0, 0, 1]).share).toBe(0);
  });
});
