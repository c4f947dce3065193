/**
 * Relief bodies: the flat section closed by walls and a foot, refined, repeated and bent round the band. What is sunk is
 * such a body upside down.
 */
import { AnnuletError } from "../errors.js";
import type { Point3 } from "../math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { reverseMesh, transformMesh } from "../mesh/transform.js";
import type { ReliefShape } from "../pattern/section.js";
import type { Rise } from "../pattern/weave/rise.js";
import { TURN } from "../units.js";
import { splitAtLines } from "../wrap/refine.js";
import type { Wrap } from "../wrap/wrap.js";
import { fadeBody, fadedRise } from "./fade.js";
import { FlatBody } from "./flat-body.js";
import { liftBody } from "./rise.js";

export interface BendOptions {
  readonly wrap: Wrap;
  /** Facets round the whole band. */
  readonly facets: number;
  /** v of the lines on which the seat's own facets lie, mm, ascending. */
  readonly stations: readonly number[];
  /** Tiles round the band. */
  readonly repeats: number;
  /** By which share of a facet the body's own facet lines lie beside the band's. Default half: no edges in edges. */
  readonly aside?: number;
}

const HALF_FACET = 0.5;

export interface ReliefOptions extends BendOptions {
  /** How deep the foot stands in the band, of a sunk body how high the lid stands above the seat, mm, above 0. */
  readonly sink: number;
}

/** The body of a raised region, all the way round. Closed by construction. */
export function buildRelief(shape: ReliefShape, { sink, ...options }: ReliefOptions): Mesh {
  return bendBody(fadeBody(flatBody(shape, sink), shape, sink), shape.seam, {
    ...options,
    forward: options.wrap.forward,
    ...(shape.rise === undefined ? {} : { rise: fadedRise(shape.rise, shape.fade) }),
  });
}

/** The bodies of a raised region: one all the way round, or one in each place where it comes again. */
export function buildReliefs(shape: ReliefShape, options: ReliefOptions): Mesh[] {
  const body = buildRelief(shape, options);
  if (shape.period === undefined) return [body];
  return Array.from({ length: options.repeats }, (_, i) => {
    const [cos, sin] = [Math.cos((TURN * i) / options.repeats), Math.sin((TURN * i) / options.repeats)];
    return transformMesh(body, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
  });
}

/** The body to be cut out for a sunk region: heights are depths. */
export function buildSunk(shape: ReliefShape, { sink, ...options }: ReliefOptions): Mesh {
  const raised = fadeBody(flatBody(shape, sink), shape, sink);
  const sunk = reverseMesh({
    ...raised,
    positions: raised.positions.map((value, i) => (i % 3 === 2 ? -value : value)),
  });
  return bendBody(sunk, shape.seam, { ...options, forward: options.wrap.forward });
}

/**
 * A flat body refined to the band's facets, bent by `forward` and repeated.
 *
 * @param seam u of the sides that neighbouring tiles share; undefined where the body ends by itself
 */
export function bendBody(
  flat: Mesh,
  seam: readonly [number, number] | undefined,
  options: BendOptions & { readonly forward: Wrap["forward"]; readonly rise?: Rise },
): Mesh {
  const across = splitAtLines(flat, 0, facetLines(flat, options));
  const split = splitAtLines(across, 1, options.stations);
  const refined = options.rise === undefined ? split : liftBody(split, options.rise);
  return seam === undefined ? bend(refined, options.forward) : bendRound(refined, seam, options);
}

/** u of lines that the band's facets have within the mesh, mm, moved by a share of a facet. */
function facetLines(flat: Mesh, { wrap, facets, aside = HALF_FACET }: BendOptions): number[] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < flat.positions.length; i += 3) {
    low = Math.min(low, flat.positions[i]);
    high = Math.max(high, flat.positions[i]);
  }
  const step = (TURN * wrap.referenceRadius) / facets;
  const first = Math.ceil(low / step - aside);
  const count = Math.max(0, Math.floor(high / step - aside) - first + 1);
  return Array.from({ length: count }, (_, i) => (first + i + aside) * step);
}

/** Top, walls and foot in (u, v, h). */
function flatBody(shape: ReliefShape, sink: number): Mesh {
  const body = new FlatBody(shape.seam);
  const same = (point: Point3) => point;
  const foot = ([u, v]: Point3): Point3 => [u, v, -sink];
  for (const polygon of shape.top) body.polygon(polygon, same, false);
  if (shape.surface !== undefined) {
    body.surface(shape.surface.top, same, false);
    body.surface(shape.surface.foot, foot, true);
  }
  for (const polygon of shape.outline) {
    if (shape.surface === undefined) body.polygon(polygon, foot, true);
    body.walls(polygon, foot, same);
  }
  return body.mesh();
}

function bend(flat: Mesh, forward: Wrap["forward"]): Mesh {
  const positions = new Float64Array(flat.positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    positions.set(forward(flat.positions[i], flat.positions[i + 1], flat.positions[i + 2]), i);
  }
  return { positions, triangles: flat.triangles };
}

/** One tile bent and turned to each place; its right side takes the next tile's left vertices, so no gap can open. */
function bendRound(
  flat: Mesh,
  seam: readonly [number, number],
  { forward, repeats }: Pick<BendOptions, "repeats"> & { readonly forward: Wrap["forward"] },
): Mesh {
  const twins = seamTwins(flat, seam);
  const count = flat.positions.length / 3;
  const own: number[] = [];
  const slot = new Int32Array(count);
  for (let vertex = 0; vertex < count; vertex++) if (!twins.has(vertex)) slot[vertex] = own.push(vertex) - 1;
  const bent = bend(flat, forward).positions;
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
