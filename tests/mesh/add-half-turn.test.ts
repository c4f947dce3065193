import { describe, expect, it } from "vitest";
import { finish } from "../../src/base/pausing.js";
import { checkSolid } from "../../src/judge/gate.js";
import { addingHalfTurn } from "../../src/mesh/add-half-turn.js";
import { clipMesh } from "../../src/mesh/clip.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { failureOf } from "../support/failure-of.js";
import { box, meshOf } from "../support/meshes.js";

const ON = 1;
const OTHER = 8;
/** About the y axis. */
const image = (x: number, y: number, z: number) => [-x, y, -z] as const;
const halfOf = (mesh: ReturnType<typeof box>) =>
  clipMesh(mesh, { normal: [-1, 0, 0], offset: 0 }, { reach: 1e-6, bit: ON });

/** A wedge through x = 0 whose section there reaches from z = low to z = 1, 1 mm thick. */
const wedge = (low: number) =>
  meshOf(
    [
      [-1, 0, low],
      [1, 0, low],
      [1, 0, 1],
      [-1, 0, 1],
      [-1, 1, low],
      [1, 1, low],
      [1, 1, 1],
      [-1, 1, 1],
    ],
    [
      [0, 1, 2],
      [0, 2, 3],
      [4, 6, 5],
      [4, 7, 6],
      [0, 5, 1],
      [0, 4, 5],
      [1, 6, 2],
      [1, 5, 6],
      [2, 7, 3],
      [2, 6, 7],
      [3, 4, 0],
      [3, 7, 4],
    ],
  );

describe("a mesh completed by a half turn", () => {
  it("is the body that was cut, closed, though its rim has other points than the rim's image", () => {
    const half = halfOf(wedge(-1));
    // The diagonals of the four sides cross the plane off the middle's image: nothing there stands opposite a point.
    const { mesh, marks } = finish(addingHalfTurn(half, { bit: ON, image }));
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1, genus: 0 });
    expect(Math.abs(signedVolume(mesh))).toBeCloseTo(4, 12);
    expect(marks).toHaveLength(mesh.positions.length / 3);
    expect(marks.every((mark) => mark === 0)).toBe(true);
  });

  it("keeps other marks, and gives the image what it is told", () => {
    const half = halfOf(wedge(-1));
    const marked = { mesh: half.mesh, marks: half.marks.map((mark) => (mark === 0 ? OTHER : mark)) };
    const whole = finish(addingHalfTurn(marked, { bit: ON, image, marksOfImage: (mark) => mark && 2 * mark }));
    whole.marks.forEach((mark, vertex) => {
      const x = whole.mesh.positions[3 * vertex];
      expect(mark).toBe(x > 0.5 ? OTHER : x < -0.5 ? 2 * OTHER : 0);
    });
  });

  it("leaves two pieces that do not reach the plane as they are", () => {
    const { mesh } = finish(addingHalfTurn(halfOf(box([1, 1, 1], [0.5, 0, 0.2])), { bit: ON, image }));
    expect(checkSolid(mesh)).toMatchObject({ components: 2 });
    expect(signedVolume(mesh)).toBeCloseTo(2, 12);
  });

  it.each([0.9, 0.997])("refuses a rim that is not its own image: down to −%f, up to 1", (low) => {
    expect(failureOf(() => finish(addingHalfTurn(halfOf(wedge(-low)), { bit: ON, image })))).toMatchObject({
      code: "seam-mismatch",
    });
  });
});
