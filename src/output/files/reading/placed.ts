/**
 * Gathers meshes that files place by maps, parts within parts, with limits: a few bytes can ask for any number of copies.
 */
import { mat4, type ReadonlyMat4 } from "gl-matrix";
import { concatMeshes, type Mesh, triangleCount, vertexCount } from "../../../mesh/mesh.js";
import { transformMesh } from "../../../mesh/transform.js";
import { type Broken, requireFewTriangles } from "./reader.js";

/** Most parts that are placed, those without a mesh among them. */
export const MOST_PARTS = 100_000;

/** Most points that are placed: three for each of the most triangles that are read. */
const MOST_POINTS = 30_000_000;

/** The map that changes nothing, in double precision. */
export const IDENTITY: ReadonlyMat4 = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

/** The map that applies `inner` first. */
export function compose(outer: ReadonlyMat4, inner: ReadonlyMat4): ReadonlyMat4 {
  return mat4.multiply(new Array<number>(16).fill(0) as unknown as mat4, outer, inner);
}

/** The map that scales by a factor, all ways alike. */
export function scaleBy(factor: number): ReadonlyMat4 {
  return [factor, 0, 0, 0, 0, factor, 0, 0, 0, 0, factor, 0, 0, 0, 0, 1];
}

export class PlacedMeshes {
  private readonly meshes: Mesh[] = [];
  private triangles = 0;
  private points = 0;
  private parts = 0;

  constructor(private readonly broken: Broken) {}

  /** Counts a part, before anything is done for it. */
  enter(): void {
    this.parts++;
    if (this.parts > MOST_PARTS) throw this.broken(`it places more than ${MOST_PARTS} parts, the most that are read`);
  }

  add(mesh: Mesh, map: ReadonlyMat4): void {
    this.triangles += triangleCount(mesh);
    requireFewTriangles(this.triangles, this.broken);
    this.points += vertexCount(mesh);
    if (this.points > MOST_POINTS)
      throw this.broken(`it places more than ${MOST_POINTS} points, the most that are read`);
    const stays = mat4.exactEquals(map, IDENTITY);
    try {
      this.meshes.push(stays ? mesh : transformMesh(mesh, map));
    } catch (cause) {
      throw this.broken("a part is placed by a map that flattens it, or is no map", cause);
    }
  }

  join(): Mesh {
    return this.meshes.length === 1 ? this.meshes[0] : concatMeshes(this.meshes);
  }
}
