/**
 * One tile of a flat body that goes on in the next tile: its two sides have the same vertices.
 */
import { AnnuletError } from "../base/errors.js";
import { extent } from "../base/math/extent.js";
import type { HalfSpace } from "../base/math/half-space.js";
import { BREATH, type Pausing } from "../base/pausing.js";
import { addingHalfTurn } from "../mesh/add-half-turn.js";
import { addImage } from "../mesh/add-image.js";
import { type Clipped, clipMesh } from "../mesh/clip.js";
import type { Mesh } from "../mesh/mesh.js";
import type { TurnPart } from "../mesh/turn-round.js";

/** A tile in (u, v, h). */
export interface Tile extends TurnPart {
  /** u of its left side and its width, mm. */
  readonly left: number;
  readonly period: number;
}

/** Mirrors of a flat body, each of which it may keep or not. */
export interface FlatMirrors {
  /** u of the ring's mirror across, mm, where it has one. */
  readonly axis: number;
  /** Whether the lines at the axis and half a tile from it are mirrors. */
  readonly across: boolean;
  /** Whether the line v = 0 is one. */
  readonly middle: boolean;
  /**
   * Whether it is its own image under the half turn about the place at u = axis, v = 0. Asked only without mirrors, of bodies
   * that end by themselves. Default no.
   */
  readonly halfTurned?: boolean;
}

/** A tile as it is. */
export function plainTile(mesh: Mesh, seam: readonly [number, number]): Tile {
  return { mesh, follows: seamTwins(mesh, seam), left: seam[0], period: seam[1] - seam[0] };
}

/** The one tile, as wide as the round, of a body that ends by itself. */
export function loneTile(mesh: Mesh, round: number): Tile {
  let left = Number.POSITIVE_INFINITY;
  for (let i = 0; i < mesh.positions.length; i += 3) left = Math.min(left, mesh.positions[i]);
  return { mesh, follows: new Int32Array(mesh.positions.length / 3).fill(-1), left, period: round };
}

const LEFT = 1;
const RIGHT = 2;
const BELOW = 4;

/** Points this near to a mirror are put on it, mm: the grid on which flat work is done is a tenth of that. */
const ON_MIRROR = 1e-5;

/**
 * A tile made of half of it, or a quarter, and mirror images across, so that its triangles are as symmetric as its shape.
 *
 * @param tile the body as it is, before it is refined
 * @param refine makes the part fine enough to be bent; it leaves the sides plane
 */
export function* mirroredTile(
  tile: Tile,
  { axis, middle }: Pick<FlatMirrors, "axis" | "middle">,
  refine: (mesh: Mesh) => Pausing<Mesh>,
): Pausing<Tile> {
  const { period } = tile;
  const far = axis + period / 2;
  const planes: [HalfSpace, number][] = [
    [{ normal: [-1, 0, 0], offset: -axis }, LEFT],
    [{ normal: [1, 0, 0], offset: far }, RIGHT],
  ];
  if (middle) planes.push([{ normal: [0, -1, 0], offset: 0 }, BELOW]);
  let part = unmarked(tilesOver(tile, axis, far));
  for (const [plane, bit] of planes) {
    yield BREATH;
    part = clipMesh(part.mesh, plane, { reach: ON_MIRROR, bit });
  }
  const refined = markSides(yield* refine(part.mesh), [axis, far], middle);
  yield BREATH;
  const across = middle ? addImage(refined, BELOW, (u, v, h) => [u, -v, h]).whole : refined;
  const { whole, imageOf } = addImage(across, RIGHT, (u, v, h) => [2 * far - u, v, h]);
  const follows = new Int32Array(whole.marks.length).fill(-1);
  across.marks.forEach((mark, vertex) => {
    if ((mark & LEFT) !== 0) follows[imageOf[vertex]] = vertex;
  });
  return { mesh: whole.mesh, follows, left: axis, period };
}

function unmarked(mesh: Mesh): Clipped {
  return { mesh, marks: new Uint8Array(mesh.positions.length / 3) };
}

/** Puts the points of the part's sides exactly on them: refining has added some. */
function markSides({ positions, triangles }: Mesh, [left, right]: readonly number[], middle: boolean): Clipped {
  const marks = new Uint8Array(positions.length / 3);
  const placed = positions.slice();
  for (let vertex = 0; vertex < marks.length; vertex++) {
    const [u, v] = [positions[3 * vertex], positions[3 * vertex + 1]];
    if (Math.abs(u - left) <= ON_MIRROR) marks[vertex] |= LEFT;
    if (Math.abs(u - right) <= ON_MIRROR) marks[vertex] |= RIGHT;
    if (middle && Math.abs(v) <= ON_MIRROR) marks[vertex] |= BELOW;
    if ((marks[vertex] & LEFT) !== 0) placed[3 * vertex] = left;
    if ((marks[vertex] & RIGHT) !== 0) placed[3 * vertex] = right;
    if ((marks[vertex] & BELOW) !== 0) placed[3 * vertex + 1] = 0;
  }
  return { mesh: { positions: placed, triangles }, marks };
}

/** The same of a body whose one mirror is the line v = 0: made of its upper half. Its sides stay where they are. */
export function* flippedBody(mesh: Mesh, refine: (mesh: Mesh) => Pausing<Mesh>): Pausing<Mesh> {
  const half = clipMesh(mesh, { normal: [0, -1, 0], offset: 0 }, { reach: ON_MIRROR, bit: BELOW });
  return addImage(markSides(yield* refine(half.mesh), [], true), BELOW, (u, v, h) => [u, -v, h]).whole.mesh;
}

/**
 * The same of a body that is its own image under a half turn alone, about the axis or half way round from it, whichever lies
 * in its middle: made of what lies on one side of that, or left as it is where its section there is not its own image as
 * nearly as a seam asks.
 *
 * @param round mm once round the band
 */
export function* halfTurnedBody(
  mesh: Mesh,
  { axis, round }: Pick<FlatMirrors, "axis"> & { readonly round: number },
  refine: (mesh: Mesh) => Pausing<Mesh>,
): Pausing<Mesh> {
  const [left, right] = extent(Array.from({ length: mesh.positions.length / 3 }, (_, i) => mesh.positions[3 * i]));
  const halves = Math.round((left + right - 2 * axis) / round);
  const middle = axis + (halves * round) / 2;
  const half = clipMesh(mesh, { normal: [-1, 0, 0], offset: -middle }, { reach: ON_MIRROR, bit: LEFT });
  const refined = markSides(yield* refine(half.mesh), [middle, Number.POSITIVE_INFINITY], false);
  const image = (u: number, v: number, h: number) => [2 * middle - u, -v, h] as const;
  try {
    return (yield* addingHalfTurn(refined, { bit: LEFT, image })).mesh;
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    return yield* refine(mesh);
  }
}

/** Tiles side by side, joined at their sides, from u to u at least; the outermost sides stay open. */
export function tilesOver({ mesh, follows, left, period }: Tile, low: number, high: number): Mesh {
  const [first, last] = [Math.floor((low - left) / period), Math.floor((high - left) / period)];
  const count = follows.length;
  const copies = last - first + 1;
  const positions = new Float64Array(3 * count * copies);
  const triangles = new Uint32Array(mesh.triangles.length * copies);
  for (let copy = 0; copy < copies; copy++) {
    const [own, next] = [count * copy, count * (copy + 1)];
    positions.set(mesh.positions, 3 * own);
    for (let vertex = own; vertex < next; vertex++) positions[3 * vertex] += (first + copy) * period;
    const base = mesh.triangles.length * copy;
    mesh.triangles.forEach((vertex, i) => {
      const twin = copy + 1 < copies ? follows[vertex] : -1;
      triangles[base + i] = twin === -1 ? own + vertex : next + twin;
    });
  }
  return { positions, triangles };
}

/** So many tiles side by side, the last joined to the first: its right side takes the first's left vertices. */
export function tilesRound({ mesh, follows, period }: Tile, count: number): Mesh {
  // What stands for a point of the next tile has no number of its own.
  const slot = new Int32Array(follows.length).fill(-1);
  let own = 0;
  follows.forEach((twin, vertex) => {
    if (twin === -1) slot[vertex] = own++;
  });
  const positions = new Float64Array(3 * own * count);
  const triangles = new Uint32Array(mesh.triangles.length * count);
  for (let copy = 0; copy < count; copy++) {
    const [here, next] = [own * copy, own * ((copy + 1) % count)];
    slot.forEach((at, vertex) => {
      if (at === -1) return;
      positions.set(mesh.positions.subarray(3 * vertex, 3 * vertex + 3), 3 * (here + at));
      positions[3 * (here + at)] += copy * period;
    });
    mesh.triangles.forEach((vertex, i) => {
      const twin = follows[vertex];
      triangles[mesh.triangles.length * copy + i] = twin === -1 ? here + slot[vertex] : next + slot[twin];
    });
  }
  return { positions, triangles };
}

/** Distance within which the two sides' vertices are the same, mm: they differ by rounding alone. */
const TWIN_REACH = 1e-7;

/** For each vertex on the right side its twin on the left, −1 for all others. */
function seamTwins({ positions }: Mesh, [left, right]: readonly [number, number]): Int32Array {
  const twins = new Int32Array(positions.length / 3).fill(-1);
  const onSide = (u: number) => Array.from(twins.keys()).filter((vertex) => positions[3 * vertex] === u);
  const [lefts, rights] = [onSide(left), onSide(right)];
  for (const vertex of rights) {
    const twin = lefts.find((other) =>
      [1, 2].every((k) => Math.abs(positions[3 * vertex + k] - positions[3 * other + k]) <= TWIN_REACH),
    );
    if (twin === undefined) throw unmatched();
    twins[vertex] = twin;
  }
  if (rights.length !== lefts.length) throw unmatched();
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
