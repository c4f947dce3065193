import { describe, expect, it } from "vitest";
import { turnOf } from "../../src/base/math/turn-of.js";
import { holdRounded } from "../../src/casting/hold-rounded.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { layDown } from "../../src/output/print/lay-down.js";
import { failureOf } from "../band/profile/specs.js";
import { box, meshOf } from "../support/meshes.js";

/** A box of 20 mm about the middle, with two points within its top, beside the axis, so many mm apart along y. */
function withNear(apart: number): Mesh {
  const whole = box([20, 20, 20], [-10, -10, 0]);
  const points = Array.from({ length: 8 }, (_, i) => Array.from(whole.positions.subarray(3 * i, 3 * i + 3)));
  const triangles = Array.from({ length: 12 }, (_, t) => Array.from(whole.triangles.subarray(3 * t, 3 * t + 3)));
  for (const y of [0, apart]) {
    const added = points.push([3, y, 20]) - 1;
    const turns = (i: number, j: number) =>
      turnOf(points[i][0], points[i][1], points[j][0], points[j][1], points[added][0], points[added][1]) > 0;
    const holds = ([a, b, c]: number[]) =>
      [a, b, c].every((i) => points[i][2] === 20) && turns(a, b) && turns(b, c) && turns(c, a);
    const within = triangles.findIndex(holds);
    const [a, b, c] = triangles[within];
    triangles.splice(within, 1, [a, b, added], [b, c, added], [c, a, added]);
  }
  return meshOf(points, triangles);
}

describe("a solid that is turned for a printer", () => {
  it("is left as it is where it passes", () => {
    const mesh = box([2, 3, 4]);
    expect(holdRounded(mesh)).toBe(mesh);
  });

  it("loses the points that become one in single precision, and nothing else", () => {
    const mesh = withNear(2e-7);
    expect(checkSolid(mesh).closed).toBe(true);
    const collapsed = [10, 20, 30, 50, 70].filter((tilt) => {
      const turned = layDown(mesh, { stance: "tilted", tilt });
      if (checkSolid(turned).closed) return false;
      const held = holdRounded(turned);
      expect(checkSolid(held)).toMatchObject({ closed: true, genus: 0 });
      expect(Math.abs(signedVolume(held) / 8000 - 1)).toBeLessThan(1e-6);
      return true;
    });
    expect(collapsed.length).toBeGreaterThan(0);
  });

  it("is refused where it is open", () => {
    const open = { ...box(), triangles: box().triangles.slice(3) };
    expect(failureOf(() => holdRounded(open)).code).toBe("not-closed");
  });
});
