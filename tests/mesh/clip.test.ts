import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distanceTo, type HalfSpace } from "../../src/base/math/half-space.js";
import type { Point3 } from "../../src/base/math/point.js";
import { checkSolid } from "../../src/judge/gate.js";
import { capMesh } from "../../src/mesh/cap.js";
import { type Clipped, clipMesh } from "../../src/mesh/clip.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { SEED } from "../band/profile/specs.js";
import { box, sphere, torus } from "../support/meshes.js";

const capped = ({ mesh, marks }: Clipped, keep: HalfSpace) =>
  capMesh(mesh, keep, (vertex) => (marks[vertex] & 1) !== 0);

const pointsOf = ({ mesh: { positions: p } }: Clipped): Point3[] =>
  Array.from({ length: p.length / 3 }, (_, i): Point3 => [p[3 * i], p[3 * i + 1], p[3 * i + 2]]);

const share = fc.double({ min: -1, max: 1, noNaN: true });

const plane = fc
  .tuple(share, share, share, fc.double({ min: -3, max: 3, noNaN: true }))
  .filter(([x, y, z]) => Math.hypot(x, y, z) > 0.1)
  .map(([x, y, z, offset]): HalfSpace => {
    const length = Math.hypot(x, y, z);
    return { normal: [x / length, y / length, z / length], offset };
  });

/** Volume between an open mesh and a point of the plane at which it is open: that of the mesh closed there. */
function volumeTo({ mesh: { positions: p, triangles } }: Clipped, { normal, offset }: HalfSpace): number {
  let six = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((i) => normal.map((n, k) => p[3 * triangles[t + i] + k] - offset * n));
    six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return six / 6;
}

describe("a mesh cut at a plane", () => {
  it("of a box leaves the box up to there (2 × 3 × 4, cut at 0.5: 6 mm³)", () => {
    const keep: HalfSpace = { normal: [1, 0, 0], offset: 0.5 };
    expect(signedVolume(capped(clipMesh(box([2, 3, 4]), keep, { reach: 0 }), keep))).toBeCloseTo(6, 12);
  });

  it("of a box through opposite edges leaves half of it", () => {
    const keep: HalfSpace = { normal: [Math.SQRT1_2, -Math.SQRT1_2, 0], offset: 0 };
    const part = capped(clipMesh(box([2, 2, 5]), keep, { reach: 1e-9 }), keep);
    expect(signedVolume(part)).toBeCloseTo(10, 12);
    expect(checkSolid(part)).toMatchObject({ closed: true, genus: 0 });
  });

  it("parts any solid into two that make it up, with all of its rim in the plane", () => {
    const solids = [box([4, 3, 2], [-2, -1, -1]), sphere(2.2, 9, 12), torus(2, 0.8, 17, 9)];
    fc.assert(
      fc.property(fc.constantFrom(...solids), plane, (solid, keep) => {
        const {
          normal: [x, y, z],
          offset,
        } = keep;
        const other: HalfSpace = { normal: [-x, -y, -z], offset: -offset };
        const volumes = [keep, other].map((half) => {
          const part = clipMesh(solid, half, { reach: 0 });
          pointsOf(part).forEach((point, i) => {
            const away = distanceTo(half, ...point);
            if (part.marks[i] === 1) expect(Math.abs(away)).toBeLessThan(1e-13);
            else expect(away).toBeLessThan(0);
          });
          return volumeTo(part, half);
        });
        expect(volumes[0] + volumes[1]).toBeCloseTo(signedVolume(solid), 10);
      }),
      { seed: SEED },
    );
  });

  it("cuts both triangles of an edge at one point", () => {
    const keep: HalfSpace = { normal: [0, 0, 1], offset: 0.3 };
    const { mesh, marks } = clipMesh(torus(3, 1, 12, 9), keep, { reach: 0 });
    const rim = pointsOf({ mesh, marks }).filter((_, i) => marks[i] === 1);
    expect(new Set(rim.map((point) => point.join(" "))).size).toBe(rim.length);
  });

  it("puts points within reach on it, and no others", () => {
    const solid = box([1, 1, 1]);
    const keep: HalfSpace = { normal: [0, 0, 1], offset: 1.0004 };
    expect(clipMesh(solid, keep, { reach: 0.0003 }).marks).toEqual(new Uint8Array(8));
    const near = clipMesh(solid, keep, { reach: 0.0005 });
    expect(near.marks.filter((mark) => mark === 1)).toHaveLength(4);
    expect(Math.max(...near.mesh.positions)).toBeCloseTo(1.0004, 14);
    // Its lid lies in the plane, so it is left out.
    expect(near.mesh.triangles).toHaveLength(3 * 10);
  });

  it("leaves nothing of what lies beyond it or in it", () => {
    const keep: HalfSpace = { normal: [-1, 0, 0], offset: -1 };
    expect(clipMesh(box([1, 1, 1]), keep, { reach: 0 }).mesh.triangles).toHaveLength(0);
  });

  it("keeps the marks of points, and gives a cut edge's point those of both ends", () => {
    const solid = box([2, 2, 2]);
    const marks = Uint8Array.from(solid.positions.filter((_, i) => i % 3 === 1).map((y) => (y === 0 ? 2 : 4)));
    const part = clipMesh(solid, { normal: [0, 0, 1], offset: 1 }, { reach: 0, marks, bit: 1 });
    pointsOf(part).forEach(([, y, z], i) => {
      const own = y === 0 ? 2 : y === 2 ? 4 : 0;
      expect(part.marks[i]).toBe(own | (z === 1 ? 1 : 0));
    });
  });

  it("cuts another shape of the mesh at the same shares of its edges", () => {
    const solid = torus(3, 1, 12, 9);
    // An affine map keeps shares, so the other shape stays the map of the cut mesh.
    const map = ([x, y, z]: readonly number[]) => [2 * x + y, y - 3 * z + 1, z + 5 * x];
    const carried = Float64Array.from(pointsOf({ mesh: solid, marks: new Uint8Array() }).flatMap(map));
    const part = clipMesh(solid, { normal: [0.6, 0, 0.8], offset: 0.7 }, { reach: 0, carried });
    const expected = pointsOf(part).flatMap(map);
    expect(part.carried).toHaveLength(expected.length);
    part.carried?.forEach((value, i) => {
      expect(value).toBeCloseTo(expected[i], 12);
    });
  });
});
