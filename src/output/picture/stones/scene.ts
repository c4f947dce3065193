/**
 * A ring's metal and its stones as one mesh, for what asks only what is seen and how far away: the metal's triangles first,
 * then each stone's. They are laid side by side, not united.
 */
import type { Mesh } from "../../../mesh/mesh.js";
import { acrossOf, intoSpace } from "../../../stones/frame.js";
import type { ShownStone } from "../../stones/shown-stone.js";
import { cornerNormals, facesOf } from "../corner-normals.js";

export interface Scene {
  readonly mesh: Mesh;
  /** Triangles of the metal; all after them are stones'. */
  readonly metal: number;
  readonly stones: readonly ShownStone[];
  /** Of each triangle after the metal's, which stone it is of; and of each stone, which triangle of the mesh is its first. */
  readonly stoneOf: Int32Array;
  readonly first: Int32Array;
  /** Normals of the corners of the stones' triangles, nine numbers a triangle. */
  readonly normals: Float32Array;
}

/** Edges of a round stone's facets that turn by less are none, radians: 42°, as of the metal. */
const ROUND_CREASE = (42 * Math.PI) / 180;

export function sceneOf(metal: Mesh, stones: readonly ShownStone[]): Scene {
  const triangles = metal.triangles.length / 3;
  const none = { stoneOf: new Int32Array(0), first: new Int32Array(0), normals: new Float32Array(0) };
  if (stones.length === 0) return { mesh: metal, metal: triangles, stones, ...none };
  const all = stones.reduce((sum, { body }) => sum + body.mesh.triangles.length / 3, 0);
  const points = stones.reduce((sum, { body }) => sum + body.mesh.positions.length, metal.positions.length);
  const mesh = { positions: new Float64Array(points), triangles: new Uint32Array(3 * (triangles + all)) };
  mesh.positions.set(metal.positions);
  mesh.triangles.set(metal.triangles);
  const scene = {
    ...{ mesh, metal: triangles, stones },
    stoneOf: new Int32Array(all),
    first: new Int32Array(stones.length),
    normals: new Float32Array(9 * all),
  };
  let at = metal.positions.length;
  let next = triangles;
  stones.forEach((stone, i) => {
    scene.first[i] = next;
    scene.stoneOf.fill(i, next - triangles, next - triangles + stone.body.mesh.triangles.length / 3);
    addStone(scene, stone, at, next);
    at += stone.body.mesh.positions.length;
    next += stone.body.mesh.triangles.length / 3;
  });
  return scene;
}

/** The normals of the metal's corners with those of the stones' behind them. */
export function withStones(metal: Float32Array, { stones, normals }: Scene): Float32Array {
  if (stones.length === 0) return metal;
  const all = new Float32Array(metal.length + normals.length);
  all.set(metal);
  all.set(normals, metal.length);
  return all;
}

/** Puts one stone's points from number `at`, its triangles from triangle `next` on. */
function addStone({ mesh, metal, normals }: Scene, { body, frame }: ShownStone, at: number, next: number): void {
  const { positions, triangles } = body.mesh;
  for (let i = 0; i < positions.length; i += 3) {
    mesh.positions.set(intoSpace(frame, [positions[i], positions[i + 1], positions[i + 2]]), at + i);
  }
  for (let i = 0; i < triangles.length; i++) mesh.triangles[3 * next + i] = triangles[i] + at / 3;
  const seen = new Uint8Array(triangles.length / 3).fill(1);
  const own = cornerNormals(body.mesh, facesOf(body.mesh), { seen, crease: body.round ? ROUND_CREASE : 0 });
  const across = acrossOf(frame);
  const { along, out } = frame;
  for (let i = 0; i < own.length; i += 3) {
    const [x, y, z] = [own[i], own[i + 1], own[i + 2]];
    for (let k = 0; k < 3; k++) {
      normals[9 * (next - metal) + i + k] = x * along[k] + y * across[k] + z * out[k];
    }
  }
}
