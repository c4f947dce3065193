/**
 * A raised or sunk body as a closed mesh over the flat seat: its top, its walls and a foot.
 */
import type { Point3 } from "../base/math/point.js";
import { finish, type Pausing } from "../base/pausing.js";
import type { Mesh } from "../mesh/mesh.js";
import type { FlatBody } from "../relief/flat-body.js";
import { Faces } from "./faces.js";

/**
 * Top, walls and foot in (u, v, h), open at the seam alone. What rises or fades does not do so yet.
 *
 * @param sink how deep the foot lies below the seat, mm, above 0
 */
export function flatMesh(body: FlatBody, sink: number): Mesh {
  return finish(makingFlatMesh(body, sink));
}

/** The same in pieces. */
export function* makingFlatMesh({ seam, top, surface, outline }: FlatBody, sink: number): Pausing<Mesh> {
  const faces = new Faces(seam);
  const same = (point: Point3) => point;
  const foot = ([u, v]: Point3): Point3 => [u, v, -sink];
  for (const polygon of top) yield* faces.polygon(polygon, same, false);
  if (surface !== undefined) {
    yield* faces.triangles(surface.top, same, false);
    yield* faces.triangles(surface.foot, foot, true);
  }
  for (const polygon of outline) {
    if (surface === undefined) yield* faces.polygon(polygon, foot, true);
    yield* faces.walls(polygon, foot, same);
  }
  return yield* faces.mesh();
}
