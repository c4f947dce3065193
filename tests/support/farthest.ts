/** How far one surface lies from another, by a library's search for the nearest point (three-mesh-bvh). */
import { BufferAttribute, BufferGeometry, Vector3 } from "three";
import { MeshBVH } from "three-mesh-bvh";
import type { Mesh } from "../../src/mesh/mesh.js";

/** Places on each side of a triangle's grid at which it is asked: corners, points on its sides and inside it. */
const GRID = 4;

/**
 * The largest distance to `to` from places spread over every triangle of `from`, mm.
 *
 * @param grid how fine the places lie: 1 are the corners alone
 */
export function farthest(from: Mesh, to: Mesh, grid = GRID): number {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(to.positions, 3));
  geometry.setIndex(new BufferAttribute(to.triangles.slice(), 1));
  const tree = new MeshBVH(geometry);
  const nearest = { point: new Vector3(), distance: 0, faceIndex: 0 };
  const place = new Vector3();
  const corners = [new Vector3(), new Vector3(), new Vector3()];
  let worst = 0;
  for (let t = 0; t < from.triangles.length; t += 3) {
    corners.forEach((corner, k) => {
      corner.fromArray(from.positions, 3 * from.triangles[t + k]);
    });
    for (let i = 0; i <= grid; i++) {
      for (let j = 0; i + j <= grid; j++) {
        place.set(0, 0, 0);
        [i, j, grid - i - j].forEach((weight, k) => {
          place.addScaledVector(corners[k], weight / grid);
        });
        tree.closestPointToPoint(place, nearest);
        worst = Math.max(worst, nearest.distance);
      }
    }
  }
  return worst;
}
