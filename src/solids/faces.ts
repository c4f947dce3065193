/**
 * The faces of a closed body over the flat seat, in (u, v, h), collected before it is bent.
 */

import type { FlatTriangles } from "../art/image/flat-triangles.js";
import type { Point3 } from "../base/math/point.js";
import { AT_A_BREATH, BREATH, type Pausing } from "../base/pausing.js";
import { GrowingPoints } from "../mesh/growing.js";
import type { Mesh } from "../mesh/mesh.js";
import { triangulatePolygon } from "../mesh/triangulate.js";
import { weldMesh } from "../mesh/weld.js";
import type { ReliefPolygon } from "../relief/flat-body.js";

/** Where a point of an outline goes. */
export type Place = (point: Point3) => Point3;

/** Collects the faces of one body, in pieces. */
export class Faces {
  readonly #corners = new GrowingPoints();
  readonly #seam: readonly [number, number] | undefined;

  /** @param seam u of the sides that stay open: the neighbouring tile closes them */
  constructor(seam: readonly [number, number] | undefined) {
    this.#seam = seam;
  }

  /** Faces over a polygon, upward, or downward where turned. */
  *polygon(polygon: ReliefPolygon, place: Place, turned: boolean): Pausing<void> {
    yield* this.triangles({ points: polygon.flat(), triangles: triangulatePolygon(polygon) }, place, turned);
  }

  /** The triangles of a surface, upward, or downward where turned. */
  *triangles({ points, triangles }: FlatTriangles, place: Place, turned: boolean): Pausing<void> {
    const placed = points.map(place);
    for (let i = 0; i < triangles.length; i += 3) {
      if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
      const [a, b, c] = [placed[triangles[i]], placed[triangles[i + 1]], placed[triangles[i + 2]]];
      if (turned) this.#face(a, c, b);
      else this.#face(a, b, c);
    }
  }

  /** Walls from `low` up to `high` on a polygon's rings, facing away from it. */
  *walls(polygon: ReliefPolygon, low: Place, high: Place): Pausing<void> {
    for (const ring of polygon) {
      const [lower, upper] = [ring.map(low), ring.map(high)];
      for (const [i, a] of ring.entries()) {
        if (i % AT_A_BREATH === 0) yield BREATH;
        const next = (i + 1) % ring.length;
        if (this.#seam?.some((u) => a[0] === u && ring[next][0] === u)) continue;
        this.#face(lower[i], lower[next], upper[next]);
        this.#face(lower[i], upper[next], upper[i]);
      }
    }
  }

  #face(a: Point3, b: Point3, c: Point3): void {
    this.#corners.push(a[0], a[1], a[2]);
    this.#corners.push(b[0], b[1], b[2]);
    this.#corners.push(c[0], c[1], c[2]);
  }

  *mesh(): Pausing<Mesh> {
    const positions = this.#corners.take();
    yield BREATH;
    return weldMesh({ positions, triangles: Uint32Array.from({ length: this.#corners.count }, (_, i) => i) });
  }
}
