/**
 * Undercuts of the outside: faces of relief that lean over, so that metal stands over them along the radius. A mould that is
 * drawn straight out, or a master cut from rubber, would hold there.
 *
 * A facet counts by the radius at that of its three corners where it leans over least: a whole facet of a wall that stands along
 * the radius has one that says 0. Pieces of one that the union cut say up to a sixth of the angle of a facet round the finger.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { degrees, radians } from "../../base/units.js";
import type { Mesh } from "../../mesh/mesh.js";
import { unitFaceNormals } from "../../mesh/normals.js";
import { triangleAreas } from "../../mesh/triangle-areas.js";
import { distance } from "../wall-rays.js";
import { crossingsAt } from "./measure-section.js";
import { ABOVE, onBeads } from "./on-beads.js";
import type { JudgedPiece, Measured } from "./piece.js";

/** What leans over by less is told as upright: rounding of points that lie on a grid. Chosen. */
const LEAST_LEAN = radians(1);

/** The same as a share of the angle of a facet round the finger: 0.9° at 0.005 mm, 1.8° at 0.02. Measured: a sixth; with room. */
const FACET_SHARE = 0.25;

/** The figure is the lean that so much area has or passes, mm²: slivers of a union have no trustworthy normal. Chosen. */
const LEAST_AREA = 0.02;

/** Places that are told, and how far they are apart at least, mm. */
const PLACES = 10;
const APART = 1;

/** A face that leans over. */
interface Leaning {
  readonly sine: number;
  readonly area: number;
  readonly at: Point3;
}

/** Undefined where nothing leans over by more than a degree. */
export function measureUndercut(piece: JudgedPiece): Measured | undefined {
  const beads = onBeads(piece);
  const outside = isOutside(piece);
  const leaning = leaningFaces(piece)
    .filter(({ at }) => outside(at) && !beads(at))
    .sort((a, b) => b.sine - a.sine);
  let area = 0;
  const worst = leaning.find((face) => {
    area += face.area;
    return area >= LEAST_AREA;
  });
  if (worst === undefined) return undefined;
  const all = leaning.reduce((sum, face) => sum + face.area, 0);
  const places: Point3[] = [];
  for (const { at } of leaning) {
    if (places.length >= PLACES) break;
    if (places.every((other) => distance(other, at) > APART)) places.push(at);
  }
  return {
    figure: degrees(Math.asin(Math.min(1, worst.sine))),
    places: places.map((space) => ({ space })),
    more: `${all.toFixed(2)} mm² in all`,
  };
}

/** The triangles that face the finger's axis, each with its middle. */
function leaningFaces({ mesh, profile, tolerance }: JudgedPiece): Leaning[] {
  const { positions: p } = mesh;
  const triangles = facingAxis(mesh);
  const normals = unitFaceNormals({ positions: p, triangles });
  const areas = triangleAreas({ positions: p, triangles });
  const facet = 2 * Math.acos(Math.max(0, 1 - tolerance / profile.outsideRadius));
  const least = Math.sin(Math.max(LEAST_LEAN, FACET_SHARE * facet));
  const found: Leaning[] = [];
  for (let t = 0; t < areas.length; t++) {
    const [nx, ny] = [normals[3 * t], normals[3 * t + 1]];
    let out = Number.NEGATIVE_INFINITY;
    let [x, y, z] = [0, 0, 0];
    for (let k = 0; k < 3; k++) {
      const at = 3 * triangles[3 * t + k];
      out = Math.max(out, (nx * p[at] + ny * p[at + 1]) / Math.hypot(p[at], p[at + 1]));
      x += p[at] / 3;
      y += p[at + 1] / 3;
      z += p[at + 2] / 3;
    }
    if (out < -least) found.push({ sine: -out, area: areas[t], at: [x, y, z] });
  }
  return found;
}

/** The triangles whose corners all see the axis before them: no other can lean. Normals and roots of the rest would take as long again. */
function facingAxis({ positions: p, triangles }: Mesh): Uint32Array {
  const facing = new Uint32Array(triangles.length);
  let count = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    const uz = p[b + 2] - p[a + 2];
    const vz = p[c + 2] - p[a + 2];
    const nx = (p[b + 1] - p[a + 1]) * vz - uz * (p[c + 1] - p[a + 1]);
    const ny = uz * (p[c] - p[a]) - (p[b] - p[a]) * vz;
    if (nx * p[a] + ny * p[a + 1] > 0 || nx * p[b] + ny * p[b + 1] > 0 || nx * p[c] + ny * p[c + 1] > 0) continue;
    for (let k = 0; k < 3; k++) facing[count++] = triangles[t + k];
  }
  return facing.subarray(0, count);
}

/**
 * Whether a place belongs to the outside without the band's own surfaces: it lies on nothing of the section's outline, and
 * beside the band or nearer to its top than to its bore.
 */
function isOutside({ profile, tolerance }: JudgedPiece): (point: Point3) => boolean {
  const near = Math.max(ABOVE, 2 * tolerance);
  return ([x, y, w]) => {
    const r = Math.hypot(x, y);
    const { polyline } = profile.sectionAt(Math.atan2(y, x));
    const crossings = crossingsAt(polyline, w);
    const top = crossings.length - (crossings.length % 2);
    if (top > 0 && r < (crossings[top - 2] + crossings[top - 1]) / 2) return false;
    return polyline.every((from, i) => toSide([w, r], from, polyline[(i + 1) % polyline.length]) > near);
  };
}

/** mm from a point to a straight side. */
function toSide([w, r]: Point2, [aw, ar]: Point2, [bw, br]: Point2): number {
  const [dw, dr] = [bw - aw, br - ar];
  const length = dw ** 2 + dr ** 2;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, ((w - aw) * dw + (r - ar) * dr) / length));
  return Math.hypot(w - aw - along * dw, r - ar - along * dr);
}
