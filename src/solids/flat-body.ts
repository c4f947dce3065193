/**
 * Closed bodies over the flat seat, in (u, v, h), before they are bent.
 */

import type { Surface } from "../art/image/surface.js";
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { triangulatePolygon } from "../mesh/triangulate.js";
import { weldMesh } from "../mesh/weld.js";
import type { ReliefPolygon } from "../relief/section.js";

/** Where a point of an outline goes. */
export type Place = (point: Point3) => Point3;

/** Collects the faces of one body. */
export class FlatBody {
  readonly #soup: number[] = [];
  readonly #seam: readonly [number, number] | undefined;

  /** @param seam u of the sides that stay open: the neighbouring tile closes them */
  constructor(seam: readonly [number, number] | undefined) {
    this.#seam = seam;
  }

  /** Faces over a polygon, upward, or downward where turned. */
  polygon(polygon: ReliefPolygon, place: Place, turned: boolean): void {
    this.surface({ points: polygon.flat(), triangles: triangulatePolygon(polygon) }, place, turned);
  }

  /** The triangles of a surface, upward, or downward where turned. */
  surface({ points, triangles }: Surface, place: Place, turned: boolean): void {
    for (let i = 0; i < triangles.length; i += 3) {
      const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]].map((index) => place(points[index]));
      this.#soup.push(...a, ...(turned ? c : b), ...(turned ? b : c));
    }
  }

  /** Walls from `low` up to `high` on a polygon's rings, facing away from it. */
  walls(polygon: ReliefPolygon, low: Place, high: Place): void {
    for (const ring of polygon) {
      ring.forEach((a, i) => {
        const b = ring[(i + 1) % ring.length];
        if (this.#seam?.some((u) => a[0] === u && b[0] === u)) return;
        this.#soup.push(...low(a), ...low(b), ...high(b), ...low(a), ...high(b), ...high(a));
      });
    }
  }

  mesh(): Mesh {
    return weldMesh({
      positions: Float64Array.from(this.#soup),
      triangles: Uint32Array.from({ length: this.#soup.length / 3 }, (_, i) => i),
    });
  }
}
