import { describe, expect, it } from "vitest";
import { before, type HalfSpace, after as past } from "../../src/base/math/half-space.js";
import { checkSolid } from "../../src/judge/gate.js";
import { type Clipped, clipMesh } from "../../src/mesh/clip.js";
import { END, START, turnRound } from "../../src/mesh/turn-round.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { MIDDLE, mirrorEnd, mirrorMiddle } from "../../src/union/complete.js";
import { torus } from "../support/meshes.js";

const whole = torus(6, 1.4, 36, 8);

function cut(planes: readonly (readonly [HalfSpace, number])[]): Clipped {
  const none: Clipped = { mesh: whole, marks: new Uint8Array(whole.positions.length / 3) };
  return planes.reduce(({ mesh, marks }, [plane, bit]) => clipMesh(mesh, plane, { reach: 1e-9, marks, bit }), none);
}

describe("a unit completed by mirror images", () => {
  it("above the middle plane is a whole torus with its image", () => {
    const above = cut([[{ normal: [0, 0, -1], offset: 0 }, MIDDLE]]);
    const { mesh, marks } = mirrorMiddle(above);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 1 });
    expect(signedVolume(mesh)).toBeCloseTo(signedVolume(whole), 10);
    marks.forEach((mark, v) => {
      expect((mark & MIDDLE) !== 0).toBe(mesh.positions[3 * v + 2] === 0);
    });
  });

  it.each([1, 2, 3, 5])("is a torus again, turned to %i places", (units) => {
    const end = 0.05 + Math.PI / units;
    // The half of one unit has one plane for both its ends.
    const planes =
      units === 1 ? [[past(0.05), START] as const] : [[past(0.05), START] as const, [before(end), END] as const];
    const part = cut(planes);
    const marks = part.marks.map((mark, v) =>
      units === 1 && mark === START && part.mesh.positions[3 * v] < 0 ? END : mark,
    );
    const ring = turnRound(mirrorEnd({ mesh: part.mesh, marks }, end), units);
    expect(checkSolid(ring)).toMatchObject({ closed: true, genus: 1 });
    // A torus of 36 facets has no mirror at 0.05 rad: the images of what lies between the planes, however often.
    const { positions: p, triangles } = part.mesh;
    let six = 0;
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => [...p.subarray(3 * triangles[t + k], 3 * triangles[t + k] + 3)]);
      six +=
        a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
    expect(signedVolume(ring)).toBeCloseTo((2 * units * six) / 6, 9);
  });
});
