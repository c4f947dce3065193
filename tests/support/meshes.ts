/**
 * Small meshes with known volume, for tests. Lengths in mm; all face outward.
 */
import type { Mesh } from "../../src/mesh/mesh.js";

export function meshOf(points: readonly (readonly number[])[], triangles: readonly (readonly number[])[]): Mesh {
  return { positions: new Float64Array(points.flat()), triangles: new Uint32Array(triangles.flat()) };
}

/** A box with one corner at `at`; eight vertices, twelve triangles. */
export function box(size: readonly number[] = [1, 1, 1], at: readonly number[] = [0, 0, 0]): Mesh {
  const points: number[][] = [];
  for (const x of [0, 1]) {
    for (const y of [0, 1]) for (const z of [0, 1]) points.push([x, y, z].map((on, k) => at[k] + on * size[k]));
  }
  const quads = [
    [0, 1, 3, 2],
    [4, 6, 7, 5],
    [0, 4, 5, 1],
    [2, 3, 7, 6],
    [0, 2, 6, 4],
    [1, 5, 7, 3],
  ];
  return meshOf(
    points,
    quads.flatMap(([a, b, c, d]) => [
      [a, b, c],
      [a, c, d],
    ]),
  );
}

/**
 * A closed outline of (w, r) turned once round Z in `around` steps: x = r cos θ, y = r sin θ, z = w. It faces outward when
 * the outline is counter-clockwise with r to the right and w up.
 */
export function revolve(outline: readonly (readonly [number, number])[], around: number): Mesh {
  const points: number[][] = [];
  const triangles: number[][] = [];
  const n = outline.length;
  for (let i = 0; i < around; i++) {
    const angle = (2 * Math.PI * i) / around;
    for (const [w, r] of outline) points.push([r * Math.cos(angle), r * Math.sin(angle), w]);
    for (let j = 0; j < n; j++) {
      const a = i * n + j;
      const b = i * n + ((j + 1) % n);
      const c = ((i + 1) % around) * n + j;
      const d = ((i + 1) % around) * n + ((j + 1) % n);
      triangles.push([a, c, d], [a, d, b]);
    }
  }
  return meshOf(points, triangles);
}

/** A torus round Z: `radius` to the tube's centre, `tube` the tube's radius. */
export function torus(radius: number, tube: number, around: number, across: number): Mesh {
  return revolve(
    Array.from({ length: across }, (_, j) => {
      const angle = (2 * Math.PI * j) / across;
      return [tube * Math.sin(angle), radius + tube * Math.cos(angle)] as const;
    }),
    around,
  );
}

/**
 * A solid of revolution about Z that meets its axis: `outline` of (z, r) runs from the lower pole's neighbour to the
 * upper pole's, the poles are given by their z.
 */
export function spindle(
  bottom: number,
  outline: readonly (readonly [number, number])[],
  top: number,
  around: number,
): Mesh {
  const points: number[][] = [[0, 0, bottom]];
  const triangles: number[][] = [];
  for (const [z, r] of outline) {
    for (let i = 0; i < around; i++) {
      const angle = (2 * Math.PI * i) / around;
      points.push([r * Math.cos(angle), r * Math.sin(angle), z]);
    }
  }
  const last = points.push([0, 0, top]) - 1;
  const at = (row: number, i: number) => 1 + row * around + (i % around);
  for (let i = 0; i < around; i++) {
    triangles.push([0, at(0, i + 1), at(0, i)]);
    for (let row = 0; row + 1 < outline.length; row++) {
      triangles.push([at(row, i), at(row, i + 1), at(row + 1, i + 1)]);
      triangles.push([at(row, i), at(row + 1, i + 1), at(row + 1, i)]);
    }
    triangles.push([last, at(outline.length - 1, i), at(outline.length - 1, i + 1)]);
  }
  return meshOf(points, triangles);
}

/** A sphere round the origin by latitude and longitude. */
export function sphere(radius: number, rows: number, around: number): Mesh {
  const outline = Array.from({ length: rows - 1 }, (_, j) => {
    const angle = (Math.PI * (j + 1)) / rows;
    return [-radius * Math.cos(angle), radius * Math.sin(angle)] as const;
  });
  return spindle(-radius, outline, radius, around);
}

/** The same triangles, each with corners of its own, as an STL file holds them. */
export function soup(mesh: Mesh): Mesh {
  const positions = new Float64Array(mesh.triangles.length * 3);
  mesh.triangles.forEach((vertex, i) => {
    positions.set(mesh.positions.subarray(3 * vertex, 3 * vertex + 3), 3 * i);
  });
  return { positions, triangles: Uint32Array.from({ length: mesh.triangles.length }, (_, i) => i) };
}

/** Each triangle as the sorted text of its corners in order, lowest first: equal for equal surfaces, whatever the indices. */
export function surfaceKey(mesh: Mesh): string[] {
  const keys: string[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((i) => {
      const at = 3 * mesh.triangles[t + i];
      return [...mesh.positions.subarray(at, at + 3)].map((value) => value + 0).join(" ");
    });
    const first = corners.indexOf([...corners].sort()[0]);
    keys.push([...corners.slice(first), ...corners.slice(0, first)].join(" | "));
  }
  return keys.sort();
}

/** Two triangles that meet in one point. */
export function butterfly(): Mesh {
  const points = [
    [0, 0, 0],
    [1, 0, 0],
    [0, 1, 0],
    [-1, 0, 0],
    [0, -1, 0],
  ];
  return meshOf(points, [
    [0, 1, 2],
    [0, 3, 4],
  ]);
}
