/**
 * Checks one form of a mesh, exact or rounded: topology by its edge table, then size, sense and thin triangles.
 * Euler and Poincaré: V − E + F = 2 · shells − 2 · genus.
 */
import type { Point3 } from "../math/point.js";
import { buildEdgeTable, type EdgeTable, nextEdge, previousEdge } from "../mesh/edges.js";
import type { Mesh } from "../mesh/mesh.js";
import { edgeShells, type Shells } from "../mesh/shells.js";
import { volumesByLabel } from "../mesh/volume.js";
import { windingNumber } from "../mesh/winding.js";
import { countOf, type Fault, type FaultCode, FaultCounter } from "./faults.js";

/** What was found in one form of the mesh. */
export interface FormCheck {
  /** Whether there is no fault. */
  readonly closed: boolean;
  /** Vertices that some triangle uses. */
  readonly vertices: number;
  readonly edges: number;
  /** Triangles with three different vertices. */
  readonly triangles: number;
  /** Shells that hang together by edges; a sealed void is a shell of its own. */
  readonly components: number;
  /** Shells that face inward and lie inside another shell: sealed hollows. */
  readonly voids: number;
  /** V − E + F. */
  readonly eulerCharacteristic: number;
  /** Handles of all shells together; undefined while edges are unmatched or vertices pinched. */
  readonly genus: number | undefined;
  /** Signed, mm³; a void counts against it. Without meaning while edges are unmatched, NaN with coordinates that are. */
  readonly volume: number;
  /** Smallest angle of any triangle, radians; undefined in an empty mesh. */
  readonly smallestAngle: number | undefined;
  /** mm; undefined in an empty mesh. */
  readonly shortestEdge: number | undefined;
  readonly faults: readonly Fault[];
}

/**
 * A triangle has no area when its smallest height is at most this share of the largest coordinate among its corners.
 *
 * The differences, products and sum of a cross product in double precision err by at most 8 · 2⁻⁵³ · |u| |v|, so the
 * height errs by at most 8 · 2⁻⁵³ times an edge, and an edge is at most 2√3 times the largest coordinate: together
 * below 2⁻⁴⁸. What lies under it cannot be told from zero. A float32 step is 2⁻²³ of the coordinate, so the threshold is a
 * 2⁻²⁵ part of it (4e-14 mm on a ring): three collinear float32 points are always caught, and a sliver that float32
 * can tell from a line is not.
 */
export const FLAT_HEIGHT = 2 ** -48;

/** Half way between inside, 1, and outside, 0: rounding moves a winding number by far less. */
const INSIDE_WINDING = 0.5;

export function checkForm(mesh: Mesh, components: number): FormCheck {
  const faults: Fault[] = [];
  const report = (code: FaultCode, { count, places }: FaultCounter, message: string) => {
    if (count > 0) faults.push({ code, count, places, message });
  };

  const triangles = sortOutTriangles(mesh, report);
  if (triangles.kept === 0) faults.push({ code: "empty", count: 1, places: [], message: "there are no triangles" });
  const thin = measureTriangles(mesh, triangles.skip);
  report("zero-area", thin.flat, `${countOf(thin.flat.count, "triangle has", "triangles have")} no area`);

  const edges = buildEdgeTable(mesh, triangles.skip);
  reportEdges(mesh, edges, report);
  const fans = countFans(mesh, edges, triangles.skip);
  report(
    "pinched-vertex",
    fans.pinched,
    `${countOf(fans.pinched.count, "vertex joins", "vertices join")} surfaces that touch nowhere else round it`,
  );

  const shells = edgeShells(edges, triangles.skip);
  if (triangles.kept > 0 && shells.count !== components) {
    const found = new FaultCounter();
    for (const first of firstTriangles(shells)) found.add(() => corner(mesh, 3 * first));
    report("components", found, `the mesh is in ${countOf(shells.count, "piece")} where ${components} should be`);
  }

  const matched = edges.open.length === 0 && edges.crowded.length === 0 && triangles.kept > 0;
  const volumes = volumesByLabel(mesh, shells.of, shells.count);
  const senses =
    matched && !triangles.nonFinite ? checkSenses(mesh, shells, volumes) : { inverted: new FaultCounter(), voids: 0 };
  report("inside-out", senses.inverted, `${countOf(senses.inverted.count, "piece faces", "pieces face")} inward`);

  const euler = fans.vertices - edges.count + triangles.kept;
  return {
    closed: faults.length === 0,
    vertices: fans.vertices,
    edges: edges.count,
    triangles: triangles.kept,
    components: shells.count,
    voids: senses.voids,
    eulerCharacteristic: euler,
    genus: matched && fans.pinched.count === 0 ? shells.count - euler / 2 : undefined,
    volume: volumes.reduce((sum, volume) => sum + volume, 0),
    smallestAngle: triangles.kept === 0 ? undefined : thin.smallestAngle,
    shortestEdge: triangles.kept === 0 ? undefined : thin.shortestEdge,
    faults,
  };
}

type Report = (code: FaultCode, counter: FaultCounter, message: string) => void;

/** Finds what cannot take part in the edge table: such triangles are reported once and then left out. */
function sortOutTriangles(mesh: Mesh, report: Report): { skip: Uint8Array; kept: number; nonFinite: boolean } {
  const { positions, triangles } = mesh;
  const vertices = positions.length / 3;
  const skip = new Uint8Array(triangles.length / 3);
  const nonFinite = new FaultCounter();
  const outOfRange = new FaultCounter();
  const repeated = new FaultCounter();
  for (let i = 0; i < positions.length; i += 3) {
    if (!Number.isFinite(positions[i] + positions[i + 1] + positions[i + 2])) nonFinite.add(() => point(mesh, i / 3));
  }
  let kept = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    if (a >= vertices || b >= vertices || c >= vertices) {
      skip[t / 3] = 1;
      const known = [a, b, c].find((vertex) => vertex < vertices);
      outOfRange.add(() => (known === undefined ? undefined : point(mesh, known)));
    } else if (a === b || b === c || c === a) {
      skip[t / 3] = 1;
      repeated.add(() => corner(mesh, t));
    } else kept++;
  }
  report(
    "non-finite",
    nonFinite,
    `${countOf(nonFinite.count, "vertex has", "vertices have")} a coordinate that is no finite number`,
  );
  report(
    "index-out-of-range",
    outOfRange,
    `${countOf(outOfRange.count, "triangle names", "triangles name")} a vertex that is not there`,
  );
  report(
    "repeated-vertex",
    repeated,
    `${countOf(repeated.count, "triangle uses", "triangles use")} the same vertex more than once`,
  );
  return { skip, kept, nonFinite: nonFinite.count > 0 };
}

function measureTriangles(mesh: Mesh, skip: Uint8Array) {
  const { positions: p, triangles } = mesh;
  const flat = new FaultCounter();
  let smallestAngle = Number.POSITIVE_INFINITY;
  let shortestSquare = Number.POSITIVE_INFINITY;
  for (let t = 0; t < triangles.length; t += 3) {
    if (skip[t / 3] !== 0) continue;
    const a = 3 * triangles[t];
    const b = 3 * triangles[t + 1];
    const c = 3 * triangles[t + 2];
    const [ux, uy, uz] = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
    const [vx, vy, vz] = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
    const [wx, wy, wz] = [p[c] - p[b], p[c + 1] - p[b + 1], p[c + 2] - p[b + 2]];
    const u = ux * ux + uy * uy + uz * uz;
    const v = vx * vx + vy * vy + vz * vz;
    const w = wx * wx + wy * wy + wz * wz;
    const cross = Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2);
    const longest = Math.sqrt(Math.max(u, v, w));
    const shortest = Math.min(u, v, w);
    const size = Math.max(largest(p, a), largest(p, b), largest(p, c));
    if (cross <= FLAT_HEIGHT * size * longest) {
      flat.add(() => [
        p[a] / 3 + p[b] / 3 + p[c] / 3,
        p[a + 1] / 3 + p[b + 1] / 3 + p[c + 1] / 3,
        p[a + 2] / 3 + p[b + 2] / 3 + p[c + 2] / 3,
      ]);
    }
    if (shortest < shortestSquare) shortestSquare = shortest;
    // The smallest angle faces the shortest edge; twice its cosine times the other two edges is u + v + w − 2 shortest.
    const angle = Math.atan2(2 * cross, u + v + w - 2 * shortest);
    if (angle < smallestAngle) smallestAngle = angle;
  }
  return { flat, smallestAngle, shortestEdge: Math.sqrt(shortestSquare) };
}

function reportEdges(mesh: Mesh, edges: EdgeTable, report: Report): void {
  const open = new FaultCounter();
  for (const h of edges.open) open.add(() => edgeMiddle(mesh, h));
  report("open-edge", open, `${countOf(open.count, "edge belongs", "edges belong")} to one triangle only`);
  const crowded = new FaultCounter();
  for (const h of edges.crowded) crowded.add(() => edgeMiddle(mesh, h));
  report(
    "edge-used-twice",
    crowded,
    `${countOf(crowded.count, "edge is", "edges are")} used more than once in the same direction`,
  );
}

/**
 * Counts the used vertices and finds those with more than one fan of triangles. Vertices on an edge that is used twice
 * are passed over: fans cannot be told apart there, and the edge is reported.
 */
function countFans(mesh: Mesh, edges: EdgeTable, skip: Uint8Array): { vertices: number; pinched: FaultCounter } {
  const { triangles } = mesh;
  const { opposite } = edges;
  const corners = new Uint32Array(mesh.positions.length / 3);
  const firstCorner = new Int32Array(corners.length).fill(-1);
  for (let h = 0; h < triangles.length; h++) {
    if (skip[Math.floor(h / 3)] !== 0) continue;
    corners[triangles[h]]++;
    if (firstCorner[triangles[h]] === -1) firstCorner[triangles[h]] = h;
  }
  const passOver = new Uint8Array(corners.length);
  for (const h of edges.crowded) {
    passOver[triangles[h]] = 1;
    passOver[triangles[nextEdge(h)]] = 1;
  }
  const pinched = new FaultCounter();
  let vertices = 0;
  for (let vertex = 0; vertex < corners.length; vertex++) {
    const first = firstCorner[vertex];
    if (first === -1) continue;
    vertices++;
    if (passOver[vertex] === 1) continue;
    let seen = 1;
    let at = opposite[previousEdge(first)];
    for (; at !== -1 && at !== first; at = opposite[previousEdge(at)]) seen++;
    // An open fan ended on one side: go on from the start to its other side.
    if (at === -1) for (let h = opposite[first]; h !== -1; h = opposite[nextEdge(h)]) seen++;
    if (seen < corners[vertex]) pinched.add(() => point(mesh, vertex));
  }
  return { vertices, pinched };
}

/** Shells of negative volume are voids where they lie inside the rest, and inside-out where they do not. */
function checkSenses(mesh: Mesh, shells: Shells, volumes: Float64Array): { inverted: FaultCounter; voids: number } {
  const inverted = new FaultCounter();
  const first = firstTriangles(shells);
  let voids = 0;
  for (let shell = 0; shell < shells.count; shell++) {
    if (volumes[shell] > 0) continue;
    const place = corner(mesh, 3 * first[shell]);
    const round =
      shells.count === 1 ? 0 : windingNumber(mesh, place, (t) => shells.of[t] !== shell && shells.of[t] >= 0);
    if (round > INSIDE_WINDING) voids++;
    else inverted.add(() => place);
  }
  return { inverted, voids };
}

function firstTriangles(shells: Shells): number[] {
  const first: number[] = [];
  for (let t = 0; t < shells.of.length && first.length < shells.count; t++) {
    if (shells.of[t] === first.length) first.push(t);
  }
  return first;
}

function largest(p: Float64Array, at: number): number {
  return Math.max(Math.abs(p[at]), Math.abs(p[at + 1]), Math.abs(p[at + 2]));
}

function point({ positions }: Mesh, vertex: number): Point3 {
  return [positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]];
}

function corner(mesh: Mesh, h: number): Point3 {
  return point(mesh, mesh.triangles[h]);
}

function edgeMiddle(mesh: Mesh, h: number): Point3 {
  const from = corner(mesh, h);
  const to = corner(mesh, nextEdge(h));
  return [from[0] / 2 + to[0] / 2, from[1] / 2 + to[1] / 2, from[2] / 2 + to[2] / 2];
}
