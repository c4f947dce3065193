/**
 * Relief bodies: the flat section closed by walls and a foot, refined, repeated and bent round the band.
 */

import { AnnuletError } from "../errors.js";
import type { Point3 } from "../math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { triangulatePolygon } from "../mesh/triangulate.js";
import { weldMesh } from "../mesh/weld.js";
import type { ReliefPolygon, ReliefShape } from "../pattern/section.js";
import { TURN } from "../units.js";
import { splitAtLines } from "../wrap/refine.js";
import type { Wrap } from "../wrap/wrap.js";

export interface ReliefOptions {
  readonly wrap: Wrap;
  /** How deep the foot stands in the band, mm, above 0. */
  readonly sink: number;
  /** Facets round the whole band. */
  readonly facets: number;
  /** v of the lines on which the seat's own facets lie, mm, ascending. */
  readonly stations: readonly number[];
  /** Tiles round the band. */
  readonly repeats: number;
}

/** The body of a raised region, all the way round. Closed by construction. */
export function buildRelief(shape: ReliefShape, options: ReliefOptions): Mesh {
  const flat = flatBody(shape, options.sink);
  const across = splitAtLines(flat, 0, facetLines(flat, options));
  const refined = splitAtLines(across, 1, options.stations);
  return shape.seam === undefined ? bend(refined, options.wrap) : bendRound(refined, shape.seam, options);
}

/** u of the band's facets within the mesh, mm. */
function facetLines(flat: Mesh, { wrap, facets }: ReliefOptions): number[] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < flat.positions.length; i += 3) {
    low = Math.min(low, flat.positions[i]);
    high = Math.max(high, flat.positions[i]);
  }
  const step = (TURN * wrap.referenceRadius) / facets;
  const first = Math.ceil(low / step - 0.5);
  const count = Math.max(0, Math.floor(high / step - 0.5) - first + 1);
  return Array.from({ length: count }, (_, i) => (first + i + 0.5) * step);
}

/** Top, walls and foot in (u, v, h). Sides on the seam stay open: the neighbouring tile closes them. */
function flatBody(shape: ReliefShape, sink: number): Mesh {
  const soup: number[] = [];
  for (const polygon of shape.top) addPolygon(soup, polygon, (point) => point, false);
  for (const polygon of shape.outline) {
    const foot = ([u, v]: Point3): Point3 => [u, v, -sink];
    addPolygon(soup, polygon, foot, true);
    for (const ring of polygon) {
      ring.forEach((a, i) => {
        const b = ring[(i + 1) % ring.length];
        if (shape.seam?.some((u) => a[0] === u && b[0] === u)) return;
        soup.push(...foot(a), ...foot(b), ...b, ...foot(a), ...b, ...a);
      });
    }
  }
  return weldMesh({
    positions: Float64Array.from(soup),
    triangles: Uint32Array.from({ length: soup.length / 3 }, (_, i) => i),
  });
}

function addPolygon(soup: number[], polygon: ReliefPolygon, place: (point: Point3) => Point3, turned: boolean): void {
  const points = polygon.flat();
  const triangles = triangulatePolygon(polygon);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]].map((index) => place(points[index]));
    soup.push(...a, ...(turned ? c : b), ...(turned ? b : c));
  }
}

function bend(flat: Mesh, wrap: Wrap): Mesh {
  const positions = new Float64Array(flat.positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    positions.set(wrap.forward(flat.positions[i], flat.positions[i + 1], flat.positions[i + 2]), i);
  }
  return { positions, triangles: flat.triangles };
}

/** One tile bent and turned to each place; its right side takes the next tile's left vertices, so no gap can open. */
function bendRound(flat: Mesh, seam: readonly [number, number], { wrap, repeats }: ReliefOptions): Mesh {
  const twins = seamTwins(flat, seam);
  const count = flat.positions.length / 3;
  const own: number[] = [];
  const slot = new Int32Array(count);
  for (let vertex = 0; vertex < count; vertex++) if (!twins.has(vertex)) slot[vertex] = own.push(vertex) - 1;
  const bent = bend(flat, wrap).positions;
  const positions = new Float64Array(3 * own.length * repeats);
  const triangles = new Uint32Array(flat.triangles.length * repeats);
  for (let tile = 0; tile < repeats; tile++) {
    const angle = (TURN * tile) / repeats;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    own.forEach((vertex, i) => {
      const [x, y, z] = [bent[3 * vertex], bent[3 * vertex + 1], bent[3 * vertex + 2]];
      positions.set([x * cos - y * sin, x * sin + y * cos, z], 3 * (tile * own.length + i));
    });
    const next = (tile + 1) % repeats;
    flat.triangles.forEach((vertex, i) => {
      const twin = twins.get(vertex);
      triangles[tile * flat.triangles.length + i] =
        twin === undefined ? tile * own.length + slot[vertex] : next * own.length + slot[twin];
    });
  }
  return { positions, triangles };
}

/** Distance within which the two sides' vertices are the same, mm: they differ by rounding alone. */
const TWIN_REACH = 1e-7;

/** For each vertex on the right side, its twin on the left. */
function seamTwins({ positions }: Mesh, [left, right]: readonly [number, number]): Map<number, number> {
  const onSide = (u: number) =>
    Array.from({ length: positions.length / 3 }, (_, vertex) => vertex).filter((vertex) => positions[3 * vertex] === u);
  const lefts = onSide(left);
  const twins = new Map<number, number>();
  for (const vertex of onSide(right)) {
    const twin = lefts.find((other) =>
      [1, 2].every((k) => Math.abs(positions[3 * vertex + k] - positions[3 * other + k]) <= TWIN_REACH),
    );
    if (twin === undefined) throw unmatched();
    twins.set(vertex, twin);
  }
  if (twins.size !== lefts.length) throw unmatched();
  return twins;
}

function unmatched(): AnnuletError {
  return new AnnuletError({
    code: "seam-mismatch",
    message: "the two ends of a relief tile have different vertices, so neighbouring tiles would not close",
    path: "pattern.regions",
    hint: "move art that only just touches the tile's border by a few hundredths of a millimetre",
  });
}
