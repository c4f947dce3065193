/**
 * Parts points of a mesh that a single-precision file would make one: where two sheets of a surface come as near as that,
 * each point moves off the other sheet along its normal. Nothing else changes, and no triangle comes or goes.
 */
import { vec3 } from "gl-matrix";
import { mergeRoundedPoints } from "../mesh/merge.js";
import type { Mesh } from "../mesh/mesh.js";
import { unitFaceNormals } from "../mesh/normals.js";

/** How far a point moves, mm: a hundred steps of float32 on a ring, a tenth of the shortest edge that tidying leaves. */
const STEP = 2e-4;

/** Rounds after which what still coincides is left to the gate. */
const MAX_ROUNDS = 4;

type Vector = readonly [number, number, number];

/** The mesh with coincident points of float32 parted; the same mesh where there are none. */
export function partCoincident(mesh: Mesh): Mesh {
  let current = mesh;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const groups = coincidentPoints(current);
    if (groups.length === 0) break;
    current = { positions: parted(current, groups), triangles: mesh.triangles };
  }
  return current;
}

/** Points that are equal after rounding, in groups of two and more. */
function coincidentPoints({ positions }: Mesh): number[][] {
  const { indexOf, positions: different } = mergeRoundedPoints(positions);
  if (different.length === positions.length) return [];
  const groups = new Map<number, number[]>();
  indexOf.forEach((point, vertex) => {
    const group = groups.get(point);
    if (group === undefined) groups.set(point, [vertex]);
    else group.push(vertex);
  });
  return [...groups.values()].filter((group) => group.length > 1);
}

function parted(mesh: Mesh, groups: readonly (readonly number[])[]): Float64Array {
  const positions = Float64Array.from(mesh.positions);
  const around = neighbourhoods(mesh, new Set(groups.flat()));
  for (const group of groups) {
    for (const vertex of group) {
      const { normal } = around(vertex);
      const others = group.filter((other) => other !== vertex);
      // The other sheets lie outside where a gap closes, and inside where a wall ends.
      const side = others.reduce((sum, other) => sum + vec3.dot(around(other).towards, normal), 0) > 0 ? -1 : 1;
      for (let k = 0; k < 3; k++) positions[3 * vertex + k] += side * STEP * normal[k];
    }
  }
  return positions;
}

interface Neighbourhood {
  /** Unit normal, of faces weighted alike. */
  readonly normal: Vector;
  /** Sum of the ways to the corners of the faces around. */
  readonly towards: Vector;
}

/** Neighbourhoods of some points of a mesh. */
function neighbourhoods(mesh: Mesh, points: ReadonlySet<number>): (vertex: number) => Neighbourhood {
  const { positions, triangles } = mesh;
  const faces = unitFaceNormals(mesh);
  const found = new Map([...points].map((vertex) => [vertex, { normal: [0, 0, 0], towards: [0, 0, 0] }]));
  triangles.forEach((vertex, corner) => {
    const sums = found.get(vertex);
    if (sums === undefined) return;
    const first = corner - (corner % 3);
    for (let k = 0; k < 3; k++) {
      sums.normal[k] += faces[first + k];
      for (let i = 0; i < 3; i++)
        sums.towards[k] += positions[3 * triangles[first + i] + k] - positions[3 * vertex + k];
    }
  });
  return (vertex) => {
    const { normal, towards } = found.get(vertex) as { normal: number[]; towards: number[] };
    const length = Math.hypot(...normal) || 1;
    const [x, y, z] = normal;
    const [tx, ty, tz] = towards;
    return { normal: [x / length, y / length, z / length], towards: [tx, ty, tz] };
  };
}
