/**
 * Checks one form of a mesh, exact or rounded: its topology, then size, sense and thin triangles.
 * Euler and Poincaré: V − E + F = 2 · shells − 2 · genus.
 */
import type { Point3 } from "../base/math/point.js";
import { nextEdge } from "../mesh/edges.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Shells } from "../mesh/shells.js";
import { volumesByLabel } from "../mesh/volume.js";
import { windingNumber } from "../mesh/winding.js";
import { countOf, type Fault, type FaultCode, firstPlaces } from "./faults.js";
import { findThin } from "./thin.js";
import { readTopology } from "./topology.js";

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
  /**
   * Signed, mm³; a void counts against it. Without meaning while edges are unmatched, NaN with coordinates that are. Of the
   * rounded form of turned units it is the exact one's, beside which it lies by less than a step of float32 times the surface.
   */
  readonly volume: number;
  /** Smallest angle of any triangle, radians; undefined in an empty mesh. */
  readonly smallestAngle: number | undefined;
  /** mm; undefined in an empty mesh. */
  readonly shortestEdge: number | undefined;
  readonly faults: readonly Fault[];
}

/** Half way between inside, 1, and outside, 0: rounding moves a winding number by far less. */
const INSIDE_WINDING = 0.5;

/** @param topology of this mesh, or of one with the same triangles and as many points. Default: it is read. */
export function checkForm(mesh: Mesh, components: number, topology = readTopology(mesh)): FormCheck {
  const { skip, kept, edges, vertices, pinched, shells } = topology;
  const faults: Fault[] = [];
  const report = reportTo(faults);
  const atVertex = (vertex: number) => point(mesh, vertex);
  const atTriangle = (t: number) => corner(mesh, 3 * t);
  const atEdge = (h: number) => edgeMiddle(mesh, h);

  const lost = findNonFinite(mesh);
  report("non-finite", lost, atVertex, (count) => {
    return `${countOf(count, "vertex has", "vertices have")} a coordinate that is no finite number`;
  });
  report(
    "index-out-of-range",
    topology.outOfRange,
    (t) => knownCorner(mesh, t),
    (count) => `${countOf(count, "triangle names", "triangles name")} a vertex that is not there`,
  );
  report("repeated-vertex", topology.repeated, atTriangle, (count) => {
    return `${countOf(count, "triangle uses", "triangles use")} the same vertex more than once`;
  });
  if (kept === 0) faults.push({ code: "empty", count: 1, places: [], message: "there are no triangles" });
  const { flat, smallestAngle, shortestEdge } = findThin(mesh, skip);
  report(
    "zero-area",
    flat,
    (t) => centre(mesh, t),
    (count) => `${countOf(count, "triangle has", "triangles have")} no area`,
  );
  report("open-edge", edges.open, atEdge, (count) => {
    return `${countOf(count, "edge belongs", "edges belong")} to one triangle only`;
  });
  report("edge-used-twice", edges.crowded, atEdge, (count) => {
    return `${countOf(count, "edge is", "edges are")} used more than once in the same direction`;
  });
  report("pinched-vertex", pinched, atVertex, (count) => {
    return `${countOf(count, "vertex joins", "vertices join")} surfaces that touch nowhere else round it`;
  });
  if (kept > 0 && shells.count !== components) {
    report("components", firstTriangles(shells), atTriangle, (count) => {
      return `the mesh is in ${countOf(count, "piece")} where ${components} should be`;
    });
  }

  const matched = edges.open.length === 0 && edges.crowded.length === 0 && kept > 0;
  const volumes = volumesByLabel(mesh, shells.of, shells.count);
  const { inverted, voids } =
    matched && lost.length === 0 ? checkSenses(mesh, shells, volumes) : { inverted: [], voids: 0 };
  report("inside-out", inverted, atTriangle, (count) => `${countOf(count, "piece faces", "pieces face")} inward`);

  const euler = vertices - edges.count + kept;
  return {
    closed: faults.length === 0,
    vertices,
    edges: edges.count,
    triangles: kept,
    components: shells.count,
    voids,
    eulerCharacteristic: euler,
    genus: matched && pinched.length === 0 ? shells.count - euler / 2 : undefined,
    volume: volumes.reduce((sum, volume) => sum + volume, 0),
    smallestAngle: kept === 0 ? undefined : smallestAngle,
    shortestEdge: kept === 0 ? undefined : shortestEdge,
    faults,
  };
}

/** Adds a fault with its count and first places, unless nothing has it. */
function reportTo(faults: Fault[]) {
  return (
    code: FaultCode,
    items: readonly number[],
    placeOf: (item: number) => Point3 | undefined,
    message: (count: number) => string,
  ): void => {
    const count = items.length;
    if (count > 0) faults.push({ code, count, places: firstPlaces(items, placeOf), message: message(count) });
  };
}

/** Vertices with a coordinate that is no finite number. */
function findNonFinite({ positions }: Mesh): number[] {
  const found: number[] = [];
  for (let i = 0; i < positions.length; i += 3) {
    if (!Number.isFinite(positions[i] + positions[i + 1] + positions[i + 2])) found.push(i / 3);
  }
  return found;
}

/**
 * Shells of negative volume are voids where they lie inside the rest, and inside-out where they do not; of those, the
 * first triangle each.
 */
function checkSenses(mesh: Mesh, shells: Shells, volumes: Float64Array): { inverted: number[]; voids: number } {
  const inverted: number[] = [];
  const first = firstTriangles(shells);
  let voids = 0;
  for (let shell = 0; shell < shells.count; shell++) {
    if (volumes[shell] > 0) continue;
    const place = corner(mesh, 3 * first[shell]);
    const round =
      shells.count === 1 ? 0 : windingNumber(mesh, place, (t) => shells.of[t] !== shell && shells.of[t] >= 0);
    if (round > INSIDE_WINDING) voids++;
    else inverted.push(first[shell]);
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

function point({ positions }: Mesh, vertex: number): Point3 {
  return [positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]];
}

function corner(mesh: Mesh, h: number): Point3 {
  return point(mesh, mesh.triangles[h]);
}

/** The first corner of a triangle that is there. */
function knownCorner(mesh: Mesh, t: number): Point3 | undefined {
  const known = mesh.triangles.subarray(3 * t, 3 * t + 3).find((vertex) => 3 * vertex < mesh.positions.length);
  return known === undefined ? undefined : point(mesh, known);
}

function centre(mesh: Mesh, t: number): Point3 {
  const [a, b, c] = [corner(mesh, 3 * t), corner(mesh, 3 * t + 1), corner(mesh, 3 * t + 2)];
  return [a[0] / 3 + b[0] / 3 + c[0] / 3, a[1] / 3 + b[1] / 3 + c[1] / 3, a[2] / 3 + b[2] / 3 + c[2] / 3];
}

function edgeMiddle(mesh: Mesh, h: number): Point3 {
  const from = corner(mesh, h);
  const to = corner(mesh, nextEdge(h));
  return [from[0] / 2 + to[0] / 2, from[1] / 2 + to[1] / 2, from[2] / 2 + to[2] / 2];
}
