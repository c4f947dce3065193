import { describe, expect, it } from "vitest";
import type { RoundSymmetry, Sector } from "../../src/base/math/round.js";
import { finish } from "../../src/base/pausing.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { makeUnit, openSector } from "../../src/union/unit.js";
import { farthest } from "../support/farthest.js";
import { box, meshOf, torus } from "../support/meshes.js";

/** Volumes differ by what tidying and single precision change of faces and edges. */
const SAME_VOLUME = 1e-6;

/** A torus on which boxes stand, the first at an angle; `lean` turns each of them out of its mirrors. */
async function studded(count: number, { at = 0, lean = 0, below = true }): Promise<Mesh> {
  const studs = Array.from({ length: count }, (_, i) => {
    const angle = at + (2 * Math.PI * i) / count;
    const stud = transformMesh(box([1.2, 0.5, 0.6], [-0.6, -0.25, below ? -0.3 : 0.1]), turn(lean, [7.2, 0]));
    return transformMesh(stud, turn(angle, [0, 0]));
  });
  return manifoldKernel.union([torus(6, 1.4, 60, 12), ...studs]);
}

function turn(angle: number, [x, y]: readonly [number, number]) {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  // By columns.
  return [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, x, y, 0, 1] as const;
}

function aboutX(angle: number) {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  // By columns.
  return [1, 0, 0, 0, 0, cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1] as const;
}

function expectSame(
  united: Mesh,
  sector: Sector,
  { units, mirrored, halfTurned = false }: Pick<RoundSymmetry, "units" | "mirrored" | "halfTurned">,
): void {
  const symmetry = { units, mirrored, halfTurned, sectors: [sector] };
  const ring = turnRound(finish(makeUnit(united, sector, symmetry)), units);
  expect(checkSolid(ring)).toMatchObject({ closed: true, genus: 1 });
  expect(Math.abs(signedVolume(ring) / signedVolume(united) - 1)).toBeLessThan(SAME_VOLUME);
  expect(Math.max(farthest(ring, united, 1), farthest(united, ring, 1))).toBeLessThan(1e-3);
}

describe("the images of a unit are the ring that it was cut from", () => {
  it.each([1, 2, 3, 6])("half of one of %i, mirrored", async (units) => {
    const ring = await studded(6, {});
    for (const upper of [false, true]) {
      expectSame(ring, { from: 0, to: Math.PI / units, upper }, { units, mirrored: true });
    }
  });

  it.each([2, 3, 6])("one of %i, without mirrors, begun anywhere", async (units) => {
    const ring = await studded(6, { lean: 0.3, below: false });
    for (const from of [0.04, 0.37, -1.2]) {
      expectSame(ring, { from, to: from + (2 * Math.PI) / units }, { units, mirrored: false });
    }
  });

  it.each([1, 2, 3])("half of one of %i, turned over", async (units) => {
    // Each stud leans out of both mirrors, so that only half turns about its own middle are left.
    const studs = Array.from({ length: 6 }, (_, i) => {
      const stud = transformMesh(box([1.2, 0.5, 0.6], [-0.6, -0.25, -0.3]), aboutX(0.4));
      return transformMesh(
        stud,
        turn((Math.PI * i) / 3, [7.2 * Math.cos((Math.PI * i) / 3), 7.2 * Math.sin((Math.PI * i) / 3)]),
      );
    });
    const ring = await manifoldKernel.union([torus(6, 1.4, 60, 12), ...studs]);
    const sector = { from: 0, to: Math.PI / units };
    expectSame(ring, sector, { units, mirrored: false, halfTurned: true });
    const mirrored = () => makeUnit(ring, sector, { units, mirrored: true, sectors: [sector] });
    // Held to be mirrored it would be another ring.
    const wrong = turnRound(finish(mirrored()), units);
    expect(farthest(wrong, ring, 1)).toBeGreaterThan(0.05);
  });

  it("through the very middle of a body, and along its side", async () => {
    const ring = await studded(5, { lean: 0 });
    const beside = Math.asin(0.25 / 7.8);
    for (const from of [0, beside]) {
      expectSame(ring, { from, to: from + (2 * Math.PI) / 5 }, { units: 5, mirrored: false });
    }
  });
});

describe("what is cut open", () => {
  const touching = (tip: number) =>
    meshOf(
      [
        [5, tip, 0],
        [5, 1, 0],
        [5.5, 1, 0],
        [5, 1, 0.5],
      ],
      [
        [0, 2, 1],
        [0, 1, 3],
        [0, 3, 2],
        [1, 2, 3],
      ],
    );

  it("lets go of a plane that it only touches in a point", () => {
    const { mesh, marks } = finish(openSector(touching(0), { from: 0, to: 1 }));
    expect([...marks]).toEqual([0, 0, 0, 0]);
    expect(mesh.positions[1]).toBeGreaterThan(0);
    expect(mesh.positions[1]).toBeLessThan(1e-3);
    expect(mesh.triangles).toHaveLength(12);
  });

  it("has marks where it is cut", () => {
    const { marks } = finish(openSector(touching(-1), { from: 0, to: 1 }));
    expect(marks.filter((mark) => mark === 1)).toHaveLength(3);
  });

  it("of half a turn is at the start before the axis, at the end beyond it", () => {
    const { mesh, marks } = finish(openSector(torus(6, 1, 20, 8), { from: 0.2, to: 0.2 + Math.PI }));
    marks.forEach((mark, v) => {
      const along = mesh.positions[3 * v] * Math.cos(0.2) + mesh.positions[3 * v + 1] * Math.sin(0.2);
      if (mark !== 0) expect(mark).toBe(along > 0 ? 1 : 2);
    });
    expect(marks.filter((mark) => mark === 1).length).toBe(marks.filter((mark) => mark === 2).length);
  });
});
