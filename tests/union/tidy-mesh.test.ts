import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { finish } from "../../src/base/pausing.js";
import { checkForm } from "../../src/judge/check-form.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { tidyingOpen, tidyMesh } from "../../src/union/tidy-mesh.js";
import { SEED } from "../band/profile/specs.js";
import { box, meshOf, sphere, surfaceKey, torus } from "../support/meshes.js";

/** What the tidying may move a point by, mm. */
const SHORT = 2e-3;

/** Splits the edge that begins at a triangle's corner, at a place along it: two new triangles, one new vertex. */
function splitEdge(mesh: Mesh, triangle: number, corner: number, share: number): Mesh {
  const t = Array.from(mesh.triangles);
  const [a, b] = [t[3 * triangle + corner], t[3 * triangle + ((corner + 1) % 3)]];
  const at = (v: number, k: number) => mesh.positions[3 * v + k];
  const vertex = mesh.positions.length / 3;
  const positions = [...mesh.positions, ...[0, 1, 2].map((k) => at(a, k) + share * (at(b, k) - at(a, k)))];
  const triangles: number[] = [];
  for (let i = 0; i < t.length; i += 3) {
    const side = [0, 1, 2].find((k) => {
      const [p, q] = [t[i + k], t[i + ((k + 1) % 3)]];
      return (p === a && q === b) || (p === b && q === a);
    });
    if (side === undefined) {
      triangles.push(t[i], t[i + 1], t[i + 2]);
      continue;
    }
    const [p, q, r] = [t[i + side], t[i + ((side + 1) % 3)], t[i + ((side + 2) % 3)]];
    triangles.push(p, vertex, r, vertex, q, r);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

const length = (mesh: Mesh, a: number, b: number) =>
  Math.hypot(...[0, 1, 2].map((k) => mesh.positions[3 * a + k] - mesh.positions[3 * b + k]));

function shortEdges(mesh: Mesh): number {
  let count = 0;
  mesh.triangles.forEach((a, i) => {
    if (length(mesh, a, mesh.triangles[i % 3 === 2 ? i - 2 : i + 1]) <= SHORT) count++;
  });
  return count / 2;
}

/** Farthest of the first mesh's vertices from the nearest of the second's. */
function farthest(from: Mesh, to: Mesh): number {
  let most = 0;
  for (let i = 0; i < from.positions.length; i += 3) {
    let near = Number.POSITIVE_INFINITY;
    for (let j = 0; j < to.positions.length; j += 3) {
      near = Math.min(near, Math.hypot(...[0, 1, 2].map((k) => from.positions[i + k] - to.positions[j + k])));
    }
    most = Math.max(most, near);
  }
  return most;
}

interface Cut {
  readonly triangle: number;
  readonly corner: number;
  readonly mm: number;
}

const cut: fc.Arbitrary<Cut> = fc.record({
  triangle: fc.nat(1000),
  corner: fc.nat(2),
  mm: fc.oneof(fc.double({ min: 1e-7, max: 1.9e-3, noNaN: true }), fc.double({ min: 0.01, max: 0.1, noNaN: true })),
});

/** A shape with vertices put next to others along its edges. */
const untidy = fc
  .tuple(
    fc.constantFrom(box([3, 2, 1]), sphere(2, 6, 9), torus(4, 1, 9, 6)),
    fc.array(cut, { minLength: 1, maxLength: 12 }),
  )
  .map(([shape, cuts]) => ({
    shape,
    mesh: cuts.reduce((mesh, { triangle, corner, mm }) => {
      const t = triangle % (mesh.triangles.length / 3);
      const [a, b] = [mesh.triangles[3 * t + corner], mesh.triangles[3 * t + ((corner + 1) % 3)]];
      const whole = length(mesh, a, b);
      return whole < 0.02 ? mesh : splitEdge(mesh, t, corner, Math.min(mm / whole, 0.5));
    }, shape),
  }));

describe("tidying a mesh", () => {
  it("leaves it closed, of its genus and volume, without short edges, and moves no point by more than 2 µm", () => {
    fc.assert(
      fc.property(untidy, ({ shape, mesh }) => {
        const [before, after] = [checkForm(mesh, 1), checkForm(tidyMesh(mesh), 1)];
        const tidy = tidyMesh(mesh);
        expect(after.faults).toEqual([]);
        expect(after.genus).toBe(checkForm(shape, 1).genus);
        expect(Math.abs(after.volume - before.volume)).toBeLessThan(SHORT * 60);
        expect(shortEdges(tidy)).toBe(0);
        expect(farthest(mesh, tidy)).toBeLessThanOrEqual(SHORT);
        const points = new Set(Array.from({ length: mesh.positions.length / 3 }, (_, i) => point(mesh, i)));
        for (let i = 0; i < tidy.positions.length / 3; i++) expect(points).toContain(point(tidy, i));
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it("changes nothing the second time", () => {
    fc.assert(
      fc.property(untidy, ({ mesh }) => {
        const once = tidyMesh(mesh);
        expect(tidyMesh(once)).toEqual(once);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("leaves a tidy mesh as it is", () => {
    for (const mesh of [box(), sphere(2, 6, 9), torus(4, 1, 9, 6)]) {
      expect(surfaceKey(tidyMesh(mesh))).toEqual(surfaceKey(mesh));
    }
  });

  it("flips a triangle without height away, keeping volume and closedness", () => {
    // The diagonal of a box's side carries a vertex that only one of its two triangles uses; a flat one fills the gap.
    const whole = box([2, 2, 2]);
    const middle = [0, 1, 2].map((k) => (whole.positions[k] + whole.positions[9 + k]) / 2);
    const flat: Mesh = {
      positions: Float64Array.from([...whole.positions, ...middle]),
      triangles: Uint32Array.from([...whole.triangles.subarray(6), 0, 1, 3, 0, 8, 2, 8, 3, 2, 0, 3, 8]),
    };
    expect([...whole.triangles.subarray(0, 6)]).toEqual([0, 1, 3, 0, 3, 2]);
    const before = checkForm(flat, 1);
    expect(before.faults.map(({ code }) => code)).toEqual(["zero-area"]);
    const after = checkForm(tidyMesh(flat), 1);
    expect(after.faults).toEqual([]);
    expect(after.genus).toBe(0);
    expect(after.volume).toBeCloseTo(8, 12);
    expect(after.vertices).toBe(9);
  });

  it("does not collapse an edge of a neck three edges round, which would pinch the surface", () => {
    // A ring with a triangular section of 1 µm sides: every section edge is short, but no three of them bound a face.
    const thin = torus(4, 5e-4, 12, 3);
    const before = checkForm(thin, 1);
    expect(before.genus).toBe(1);
    expect(shortEdges(thin)).toBeGreaterThan(0);
    const after = checkForm(tidyMesh(thin), 1);
    expect(after.faults.map(({ code }) => code)).not.toContain("open-edge");
    expect(after.faults.map(({ code }) => code)).not.toContain("edge-used-twice");
    expect(after.genus).toBe(1);
  });

  it("does not make a tetrahedron of short edges vanish", () => {
    const tiny = meshOf(
      [
        [0, 0, 0],
        [1e-3, 0, 0],
        [0, 1e-3, 0],
        [0, 0, 1e-3],
      ],
      [
        [0, 2, 1],
        [0, 1, 3],
        [0, 3, 2],
        [1, 2, 3],
      ],
    );
    expect(surfaceKey(tidyMesh(tiny))).toEqual(surfaceKey(tiny));
  });

  it("takes a fin without thickness off two coincident vertices, so that they become one", () => {
    // A tetrahedron whose corner A is split into A and B in one place; T is the tip of a fin on the edge A–B.
    const [P, Q, R, A, B, T] = [0, 1, 2, 3, 4, 5];
    const corner = [0, 0, 1];
    const points = [[1, 0, 0], [-0.5, 0.8, 0], [-0.5, -0.8, 0], corner, corner, [-0.25, 0.4, 0.5]];
    // biome-ignore format: a face a line
    const triangles = [
      P, R, Q,
      A, P, Q,
      A, R, P,
      B, Q, R,
      A, B, R,
      T, A, Q,
      T, Q, B,
      T, B, A,
    ];
    const mesh = { positions: Float64Array.from(points.flat()), triangles: Uint32Array.from(triangles) };
    const before = checkForm(mesh, 1);
    expect(before.faults.map(({ code }) => code)).toEqual(["zero-area"]);
    const tidied = tidyMesh(mesh);
    expect(checkForm(tidied, 1)).toMatchObject({ closed: true, triangles: 4, vertices: 4 });
    expect(checkForm(tidied, 1).volume).toBeCloseTo(before.volume, 12);
  });

  it("moves no point farther than 2 µm along a chain of short edges either", () => {
    let mesh = box([3, 2, 1]);
    // Vertices along one edge, 1.5 µm apart.
    for (let i = 0; i < 12; i++) {
      const from = i === 0 ? 0 : 7 + i;
      const t = Array.from({ length: mesh.triangles.length / 3 }, (_, k) => k).find((k) => {
        const corners = [...mesh.triangles.subarray(3 * k, 3 * k + 3)];
        return corners.includes(from) && corners.includes(4);
      }) as number;
      const corners = [...mesh.triangles.subarray(3 * t, 3 * t + 3)];
      const forward = corners[(corners.indexOf(from) + 1) % 3] === 4;
      const whole = length(mesh, from, 4);
      mesh = splitEdge(
        mesh,
        t,
        forward ? corners.indexOf(from) : corners.indexOf(4),
        forward ? 1.5e-3 / whole : 1 - 1.5e-3 / whole,
      );
    }
    const tidy = tidyMesh(mesh);
    expect(checkForm(tidy, 1).faults).toEqual([]);
    expect(farthest(mesh, tidy)).toBeLessThanOrEqual(SHORT);
  });
});

function point(mesh: Mesh, vertex: number): string {
  return [...mesh.positions.subarray(3 * vertex, 3 * vertex + 3)].join(" ");
}

it("mends a row of flat triangles along an edge of many points, keeping the points", () => {
  // A tetrahedron; one of its edges has points on it, which one face uses and a fan of flat triangles hides from the other.
  const count = 60;
  const row = Array.from({ length: count + 1 }, (_, i) => [10, -2, (0.1 * i * (i + 40)) / 40]).flat();
  const [above, below] = [count + 1, count + 2];
  const triangles = [0, count, above, 0, above, below, count, below, above];
  for (let i = 0; i < count; i++) triangles.push(i + 1, i, below);
  for (let i = 1; i < count; i++) triangles.push(0, i, i + 1);
  const mesh = { positions: Float64Array.from([...row, 11, -3, 4, 9, -3, 4]), triangles: Uint32Array.from(triangles) };
  expect(checkSolid(mesh).faults.map(({ code }) => code)).toEqual(["zero-area"]);
  const tidied = tidyMesh(mesh);
  expect(checkSolid(tidied).closed).toBe(true);
  expect(tidied.positions).toHaveLength(mesh.positions.length);
});

describe("tidying a mesh that is cut open at a plane", () => {
  // A rim's edge belongs to one triangle, so it is met in one direction alone, whichever that is.
  it.each([
    ["from the lower number to the higher", 1, 2],
    ["from the higher number to the lower", 2, 1],
  ])("collapses a short edge of the rim that goes %s", (_, p, q) => {
    const points = [[0, 0, 0], [], [], [1, 0, 0], [0.5, 1, 0]];
    points[p] = [0.5, 0, 0];
    points[q] = [0.5 + 1e-7, 0, 0];
    const mesh = meshOf(points, [
      [0, p, 4],
      [p, q, 4],
      [q, 3, 4],
    ]);
    const tidy = finish(tidyingOpen({ mesh, marks: Uint8Array.from([1, 1, 1, 1, 0]) }));
    expect(tidy.mesh.triangles.length / 3).toBe(2);
    expect([...tidy.marks].sort()).toEqual([0, 1, 1, 1]);
  });
});
