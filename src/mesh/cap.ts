/**
 * Closes a mesh that is open at a plane by flat faces in that plane.
 */
import { type HalfSpace, planeCoordinates } from "../base/math/half-space.js";
import type { Point2 } from "../base/math/point.js";
import { encloses, polygonArea } from "../base/math/polygon.js";
import { borderLoops } from "./border.js";
import type { Mesh } from "./mesh.js";
import { triangulatePolygon } from "./triangulate.js";

/**
 * The mesh closed at the plane of a half space in which it lies.
 *
 * @param on whether a vertex lies on the plane
 * @throws AnnuletError `border-tangled`, `triangulation-failed`
 */
export function capMesh(mesh: Mesh, keep: HalfSpace, on: (vertex: number) => boolean): Mesh {
  const flat = planeCoordinates(keep);
  const { positions: p } = mesh;
  const rings = borderLoops(mesh, on).map((loop) => {
    const vertices = loop.map((edge) => mesh.triangles[edge]).reverse();
    const points = vertices.map((v): Point2 => flat(p[3 * v], p[3 * v + 1], p[3 * v + 2]));
    return { vertices, points, area: polygonArea(points) };
  });
  const outers = rings.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area);
  const holes = rings.filter(({ area }) => area < 0);
  const caps = outers.flatMap((outer) => {
    const inside = holes.filter((hole) => outers.find((other) => encloses(other.points, hole.points[0])) === outer);
    const all = [outer, ...inside];
    const vertices = all.flatMap((ring) => ring.vertices);
    return triangulatePolygon(all.map(({ points }) => points)).map((i) => vertices[i]);
  });
  const triangles = new Uint32Array(mesh.triangles.length + caps.length);
  triangles.set(mesh.triangles);
  triangles.set(caps, mesh.triangles.length);
  return { positions: p, triangles };
}
