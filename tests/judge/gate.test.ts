import fc from "fast-check";
import { mat4 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import type { FaultCode } from "../../src/judge/faults.js";
import { assertSolid, checkSolid } from "../../src/judge/gate.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { reverseMesh, transformMesh } from "../../src/mesh/transform.js";
import { weldMesh } from "../../src/mesh/weld.js";
import { encodeMesh } from "../../src/output/files/format.js";
import { stlBinary } from "../../src/output/files/formats/stl-binary.js";
import { admesh, hasAdmesh } from "../support/admesh.js";
import { box, butterfly, meshOf, soup, sphere, torus } from "../support/meshes.js";

function withTriangles(mesh: Mesh, triangles: ArrayLike<number>): Mesh {
  return { positions: mesh.positions, triangles: Uint32Array.from(triangles) };
}

function codes(faults: readonly { code: FaultCode }[]): FaultCode[] {
  return faults.map((fault) => fault.code);
}

/** A box whose edge 0–1 (x = y = 0, z from 0 to 1) got a middle vertex on one side only, `offset` off the edge, and a
 * thin triangle 0–1–8 that closes the gap to the other side: closed by index, flat when the offset is 0. */
function boxWithThinTriangle(offset: number): Mesh {
  const cube = box();
  const triangles = Array.from(cube.triangles);
  const at = triangles.findIndex((_, i) => i % 3 === 0 && triangles[i] === 0 && triangles[i + 1] === 1);
  triangles.splice(at, 3, 0, 8, triangles[at + 2], 8, 1, triangles[at + 2], 0, 1, 8);
  return {
    positions: new Float64Array([...cube.positions, 0, -offset, 0.5]),
    triangles: Uint32Array.from(triangles),
  };
}

describe("checkSolid on solids", () => {
  it.each([
    ["box", box(), 0],
    ["sphere", sphere(5, 20, 40), 0],
    ["torus", torus(9, 1, 90, 24), 1],
  ])("passes a %s and finds its genus", (_, mesh, genus) => {
    const check = checkSolid(mesh);
    expect(check.faults).toEqual([]);
    expect(check.float32.faults).toEqual([]);
    expect(check).toMatchObject({ closed: true, components: 1, genus, eulerCharacteristic: 2 - 2 * genus, voids: 0 });
    expect(check.volume).toBeGreaterThan(0);
  });

  it("has E = 3V and F = 2V on a plain band (V − E + F = 0)", () => {
    const { vertices, edges, triangles } = checkSolid(torus(9, 1, 90, 24));
    expect([edges, triangles]).toEqual([3 * vertices, 2 * vertices]);
  });

  it("knows the shortest edge and the smallest angle", () => {
    const check = checkSolid(box([1, 2, 10]));
    expect(check.shortestEdge).toBe(1);
    expect(check.smallestAngle).toBeCloseTo(Math.atan(1 / 10), 12);
  });

  it("takes a sealed void for a component: χ rises by 2, the volume falls", () => {
    const hollow = concatMeshes([box([3, 3, 3]), reverseMesh(box([1, 1, 1], [1, 1, 1]))]);
    expect(codes(checkSolid(hollow).faults)).toEqual(["components"]);
    const check = checkSolid(hollow, { components: 2 });
    expect(check).toMatchObject({ closed: true, components: 2, voids: 1, eulerCharacteristic: 4, genus: 0 });
    expect(check.volume).toBeCloseTo(26, 12);
  });
});

describe("checkSolid on faults", () => {
  const cube = box();
  const doubledFace = withTriangles(cube, [...cube.triangles, ...cube.triangles.slice(0, 3)]);
  const flippedFace = withTriangles(cube, [1, 0, 2].map((i) => cube.triangles[i]).concat(...cube.triangles.slice(3)));
  const bowTie = weldMesh(concatMeshes([cube, box([1, 1, 1], [1, 1, 1])]));
  const sharedEdge = weldMesh(concatMeshes([cube, box([1, 1, 1], [1, 1, 0])]));
  const withNaN = { ...cube, positions: cube.positions.map((value, i) => (i === 4 ? Number.NaN : value)) };
  const beyond = withTriangles(cube, [...cube.triangles.slice(0, 35), 8]);

  it.each<[string, Mesh, FaultCode[]]>([
    ["an open box", withTriangles(cube, cube.triangles.slice(6)), ["open-edge"]],
    ["a doubled face", doubledFace, ["edge-used-twice"]],
    ["a flipped face", flippedFace, ["edge-used-twice"]],
    ["a bow-tie vertex", bowTie, ["pinched-vertex", "components"]],
    ["two cubes that share an edge", sharedEdge, ["edge-used-twice"]],
    ["a coordinate that is not a number", withNaN, ["non-finite"]],
    ["an index beyond the vertices", beyond, ["index-out-of-range", "open-edge"]],
    ["a triangle with a repeated vertex", withTriangles(cube, [...cube.triangles, 0, 1, 1]), ["repeated-vertex"]],
    ["a flat triangle", boxWithThinTriangle(0), ["zero-area"]],
    ["two pieces", concatMeshes([cube, box([1, 1, 1], [5, 5, 5])]), ["components"]],
    ["a cube inside out", reverseMesh(cube), ["inside-out"]],
    ["nothing", meshOf([], []), ["empty"]],
  ])("finds %s", (_, mesh, expected) => {
    const check = checkSolid(mesh);
    expect(codes(check.faults)).toEqual(expected);
    expect(codes(check.float32.faults)).toEqual(expected);
    expect(check.closed).toBe(false);
    for (const fault of check.faults) {
      expect(fault.count).toBeGreaterThan(0);
      expect(fault.places.length).toBe(fault.code === "empty" ? 0 : Math.min(fault.count, 10));
    }
  });

  it("counts them and says where", () => {
    const [open] = checkSolid(withTriangles(cube, cube.triangles.slice(6))).faults;
    expect(open.count).toBe(4);
    expect(open.places.every(([x]) => x === 0)).toBe(true);
    expect(checkSolid(bowTie).faults[0].places).toEqual([[1, 1, 1]]);
    const [shared] = checkSolid(sharedEdge).faults;
    expect([shared.count, shared.places]).toEqual([1, [[1, 1, 0.5]]]);
  });

  it("finds pinched vertices on open surfaces, where two fans meet", () => {
    expect(codes(checkSolid(butterfly()).faults)).toContain("pinched-vertex");
    const sheet = withTriangles(cube, cube.triangles.slice(6));
    expect(codes(checkSolid(sheet).faults)).not.toContain("pinched-vertex");
  });

  it("sees a sliver that is sound in double precision and collapses in float32", () => {
    // 1e-9 mm is far below a float32 step at 1 mm, 1.2e-7 mm.
    const sliver = boxWithThinTriangle(1e-9);
    const moved = transformMesh(sliver, [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 5, 5, 5, 1]);
    const check = checkSolid(moved);
    expect(check.faults).toEqual([]);
    expect(codes(check.float32.faults)).toEqual(["zero-area"]);
    expect(check.closed).toBe(false);
  });

  it("sees a triangle whose corners merge in float32", () => {
    // A tetrahedron with one edge of 1e-10 mm.
    const needle = meshOf(
      [
        [5, 5, 5],
        [6, 5, 5],
        [5, 6, 5],
        [5, 5, 5 + 1e-10],
      ],
      [
        [0, 2, 1],
        [0, 1, 3],
        [1, 2, 3],
        [2, 0, 3],
      ],
    );
    const check = checkSolid(needle);
    expect(check.faults).toEqual([]);
    expect(check.shortestEdge).toBeCloseTo(1e-10, 14);
    expect(codes(check.float32.faults)).toContain("repeated-vertex");
    expect(check.closed).toBe(false);
  });

  it("catches any three collinear float32 points", () => {
    const float = fc.float({ noNaN: true, noDefaultInfinity: true, min: -16, max: 16 });
    fc.assert(
      fc.property(fc.tuple(float, float, float), fc.tuple(float, float, float), (from, step) => {
        // Whole multiples of a step of few bits stay exact in float32.
        const a = from.map((value) => Math.round(value * 1024) / 1024);
        const d = step.map((value) => Math.round(value * 1024) / 1024);
        fc.pre(d.some((value) => value !== 0));
        const points = [0, 1, 3].map((times) => a.map((value, k) => value + times * d[k]));
        expect(codes(checkSolid(meshOf(points, [[0, 1, 2]])).float32.faults)).toContain("zero-area");
      }),
      { seed: 20261125 },
    );
  });

  it("catches points that are collinear but for the rounding of doubles", () => {
    const coordinate = fc.double({ min: -12, max: 12, noNaN: true });
    const place = fc.tuple(coordinate, coordinate, coordinate);
    fc.assert(
      fc.property(place, place, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (a, b, share) => {
        const between = a.map((value, k) => value + share * (b[k] - value));
        expect(codes(checkSolid(meshOf([a, b, between], [[0, 1, 2]])).faults)).toContain("zero-area");
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  it("does not take the thinnest triangle that float32 holds for a flat one", () => {
    // Corners on a ring 10 mm out, one of them a float32 step (2⁻²⁰ mm between 8 and 16) off the line.
    const step = 2 ** -20;
    const points = [
      [8, 0, 10],
      [9, 0, 10 + step],
      [10, 0, 10],
    ];
    expect(codes(checkSolid(meshOf(points, [[0, 1, 2]])).float32.faults)).not.toContain("zero-area");
  });

  it("tells a void from a second piece that is inside out", () => {
    const inverted = concatMeshes([box([3, 3, 3]), reverseMesh(box([1, 1, 1], [5, 1, 1]))]);
    const check = checkSolid(inverted, { components: 2 });
    expect(codes(check.faults)).toEqual(["inside-out"]);
    expect(check.voids).toBe(0);
  });

  it("reports a soup by index as open and, once merged, as closed", () => {
    const check = checkSolid(soup(cube));
    expect(codes(check.faults)).toEqual(["open-edge", "components"]);
    expect(check.float32.faults).toEqual([]);
    expect(check.closed).toBe(false);
  });

  it("refuses arrays that are not triples and counts that are not whole", () => {
    const crooked = { positions: new Float64Array(4), triangles: new Uint32Array(3) };
    expect(() => checkSolid(crooked)).toThrow(AnnuletError);
    expect(() => checkSolid(cube, { components: 0 })).toThrow(AnnuletError);
  });
});

describe("assertSolid", () => {
  it("throws with the code, the faults and their places", () => {
    const open = withTriangles(box(), box().triangles.slice(3));
    let caught: unknown;
    try {
      assertSolid(open);
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(AnnuletError);
    expect(caught).toMatchObject({ code: "not-closed" });
    expect(String(caught)).toMatch(/open-edge: 3 edges belong to one triangle only, at \(0, 0, 0\.5\)/);
    expect(String(caught)).toMatch(/rounded to float32: open-edge/);
  });

  it("hands the check of a sound mesh back", () => {
    expect(assertSolid(box()).genus).toBe(0);
  });
});

describe("the gate under maps", () => {
  const cube = box([2, 3, 4]);
  const cases: [string, Mesh][] = [
    ["solid", torus(4, 1, 16, 8)],
    ["open", withTriangles(cube, cube.triangles.slice(6))],
    ["flipped", withTriangles(cube, [1, 0, 2].map((i) => cube.triangles[i]).concat(...cube.triangles.slice(3)))],
    ["pinched", weldMesh(concatMeshes([cube, box([1, 1, 1], [2, 3, 4])]))],
    ["inside out", reverseMesh(cube)],
  ];

  it.each(cases)("finds the same in a %s mesh turned, scaled and mirrored; volume follows", (_, mesh) => {
    const before = checkSolid(mesh);
    const angle = fc.double({ min: -3, max: 3, noNaN: true });
    const factor = fc.double({ min: 0.1, max: 10, noNaN: true });
    fc.assert(
      fc.property(angle, angle, factor, fc.boolean(), (turnX, turnZ, scale, mirrored) => {
        const map: mat4 = [scale, 0, 0, 0, 0, scale, 0, 0, 0, 0, mirrored ? -scale : scale, 0, 0, 0, 0, 1];
        mat4.rotateX(map, map, turnX);
        mat4.rotateZ(map, map, turnZ);
        const after = checkSolid(transformMesh(mesh, map));
        const summary = (faults: typeof after.faults) => faults.map(({ code, count }) => `${code} ${count}`);
        expect(summary(after.faults)).toEqual(summary(before.faults));
        expect(summary(after.float32.faults)).toEqual(summary(before.float32.faults));
        expect(after.genus).toBe(before.genus);
        expect(after.smallestAngle).toBeCloseTo(before.smallestAngle ?? Number.NaN, 9);
        if (before.genus !== undefined) expect(after.volume / (before.volume * scale ** 3)).toBeCloseTo(1, 10);
      }),
      { seed: 20261125, numRuns: 40 },
    );
  });

  it.skipIf(!hasAdmesh)("agrees with admesh on what is closed by edges", async () => {
    for (const [name, mesh] of cases) {
      const report = admesh(await encodeMesh(stlBinary, mesh, { name }));
      const open = checkSolid(mesh).float32.faults.find(({ code }) => code === "open-edge");
      const [one, two, three] = report.disconnectedEdges;
      expect([name, one > 0 || two > 0 || three > 0]).toEqual([name, open !== undefined]);
    }
    expect(admesh(await encodeMesh(stlBinary, torus(4, 1, 16, 8), { name: "" })).backwards).toBe(0);
  });
});
