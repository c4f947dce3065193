/**
 * Cuts the rings of a periodic strip to one period, so that the period's left and right sides match to the step.
 *
 * Rings are directed with their inside on the left. A ring that leaves through a side is cut there, and the pieces are
 * closed along the side: downwards on the left side, upwards on the right, which keeps the inside on the left.
 *
 * Offsets of art that comes again may still differ by a step between two periods, so the two sides are matched in
 * order.
 */
import { AnnuletError } from "../base/errors.js";

/** A vertex in grid steps with its height above the seat, mm. */
export interface LevelPoint {
  readonly x: number;
  readonly y: number;
  readonly h: number;
}

export type LevelRing = readonly LevelPoint[];

/** A polygon of the cell: the outer ring counter-clockwise, its holes clockwise. */
export interface LevelPolygon {
  readonly outer: LevelRing;
  readonly holes: readonly LevelRing[];
}

/** How far the two sides may disagree before it is a fault, grid steps (20 µm): rounding moves a crossing further where the outline runs along the side. */
const SEAM_REACH = 20_000;

/** The part of the rings between x = left and x = left + width, which must be one period, as polygons. */
export function cutToCell(rings: readonly LevelRing[], left: number, width: number): LevelPolygon[] {
  const right = left + width;
  const whole: LevelRing[] = [];
  const pieces: LevelPoint[][] = [];
  for (const ring of rings) {
    if (ring.every(({ x }) => x > left && x < right)) whole.push(ring);
    else if (ring.some(({ x }) => x < left) || ring.some(({ x }) => x > right))
      pieces.push(...cutRing(ring, left, right));
  }
  matchSides(pieces, left, right);
  return nestRings([...whole, ...closePieces(pieces, left, right)]);
}

/**
 * The part of each list of rings within ± half of the middle line, one list for each contour, the outermost first. The
 * outermost takes, along the edges, a vertex wherever another contour meets them, at that one's height: so what is cut off
 * ends in a wall that reaches up to the surface.
 */
export function cutAcross(contours: readonly (readonly LevelRing[])[], half: number): LevelRing[][] {
  const cut = contours.map((rings) => cutRings(rings.map(transposed), -half, half).map(transposed));
  const met = cut.flat(2).filter(({ y }) => Math.abs(y) === half);
  const [first = [], ...rest] = cut;
  return [first.map((ring) => withMet(ring, half, met)), ...rest];
}

/** The band of surface between two contours that are cut off across. */
export function bandAcross(lower: readonly LevelRing[], upper: readonly LevelRing[], half: number): LevelRing[] {
  return cutRings([...lower, ...upper.map((ring) => [...ring].reverse())].map(transposed), -half, half).map(transposed);
}

/** What of the rings lies between the sides, their borders among it. */
function cutRings(rings: readonly LevelRing[], left: number, right: number): LevelRing[] {
  const whole = rings.filter((ring) => ring.every(({ x }) => x >= left && x <= right));
  const crossing = rings.filter(
    (ring) =>
      ring.some(({ x }) => x < left || x > right) && ring.some(({ x }) => x > left) && ring.some(({ x }) => x < right),
  );
  return [
    ...whole,
    ...closePieces(
      crossing.flatMap((ring) => cutRing(ring, left, right)),
      left,
      right,
    ),
  ];
}

/** Along and across exchanged; turned round, so that the inside stays on the left. */
function transposed(ring: LevelRing): LevelRing {
  return ring.map(({ x, y, h }) => ({ x: y, y: x, h })).reverse();
}

/** The ring with those of the points on its sides along the edges, in their order. */
function withMet(ring: LevelRing, half: number, met: readonly LevelPoint[]): LevelRing {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length];
    if (Math.abs(a.y) !== half || a.y !== b.y) return [a];
    const between = met.filter(({ x, y }) => y === a.y && (x - a.x) * (x - b.x) < 0);
    const sorted = between.sort((p, q) => (b.x > a.x ? p.x - q.x : q.x - p.x));
    return [a, ...sorted.filter(({ x }, k) => k === 0 || x !== sorted[k - 1].x)];
  });
}

/** Rings that do not touch, as polygons: each clockwise ring becomes a hole of the smallest ring that contains it. */
export function nestRings(rings: readonly LevelRing[]): LevelPolygon[] {
  const sized = rings.map((ring) => ({ ring, area: twiceArea(ring), holes: [] as LevelRing[] }));
  const outers = sized.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area);
  for (const { ring, area } of sized) {
    if (area >= 0) continue;
    const owner = outers.find((outer) => outer.area > -area && contains(outer.ring, ring[0]));
    owner?.holes.push(ring);
  }
  return outers.map(({ ring, holes }) => ({ outer: ring, holes }));
}

/**
 * Where to cut: the place in the first tile where the fewest lines cross, and among those, farthest from any vertex.
 *
 * @param tile width of the tile in which places are tried, grid steps
 * @param options the period from one side to the other, grid steps, default the tile; how many places are tried, default 48
 */
export function chooseCut(
  rings: readonly LevelRing[],
  tile: number,
  { period = tile, candidates = 48 }: { readonly period?: number; readonly candidates?: number } = {},
): number {
  let best = { left: 0, crossings: Number.POSITIVE_INFINITY, clearance: -1 };
  for (let i = 0; i < candidates; i++) {
    const left = Math.round((tile * (i + 0.37)) / candidates);
    const { crossings, clearance } = judgeCut(rings, left, period);
    if (crossings < best.crossings || (crossings === best.crossings && clearance > best.clearance)) {
      if (clearance > 0) best = { left, crossings, clearance };
    }
  }
  return best.left;
}

function judgeCut(rings: readonly LevelRing[], left: number, width: number) {
  let crossings = 0;
  let clearance = Number.POSITIVE_INFINITY;
  for (const ring of rings) {
    let before = ring[ring.length - 1];
    for (const point of ring) {
      clearance = Math.min(clearance, Math.abs(point.x - left), Math.abs(point.x - left - width));
      if (before.x < left !== point.x < left) crossings++;
      before = point;
    }
  }
  return { crossings, clearance };
}

/** The spans of a ring between the sides, each from a point on a side to a point on a side. */
function cutRing(ring: LevelRing, left: number, right: number): LevelPoint[][] {
  const outside = ring.findIndex(({ x }) => x < left || x > right);
  const pieces: LevelPoint[][] = [];
  let piece: LevelPoint[] | undefined;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[(outside + i) % ring.length];
    const b = ring[(outside + i + 1) % ring.length];
    const sides = a.x < b.x ? [left, right] : [right, left];
    for (const side of sides) {
      if (a.x < side === b.x < side) continue;
      const crossing = { x: side, y: Math.round(a.y + ((b.y - a.y) * (side - a.x)) / (b.x - a.x)), h: a.h };
      if (piece === undefined) piece = [crossing];
      else {
        pieces.push([...piece, crossing]);
        piece = undefined;
      }
    }
    if (piece !== undefined && b.x > left && b.x < right) piece.push(b);
  }
  return pieces;
}

/** Gives each crossing of the right side the height of its twin on the left: they differ by rounding only. */
function matchSides(pieces: LevelPoint[][], left: number, right: number): void {
  const crossings = (side: number) =>
    pieces
      .flatMap((piece) => [0, piece.length - 1].map((at) => ({ piece, at })))
      .filter(({ piece, at }) => piece[at].x === side)
      .sort((a, b) => a.piece[a.at].y - b.piece[b.at].y);
  const [lefts, rights] = [crossings(left), crossings(right)];
  const matched =
    lefts.length === rights.length &&
    lefts.every(({ piece, at }, i) => Math.abs(piece[at].y - rights[i].piece[rights[i].at].y) <= SEAM_REACH);
  if (!matched) {
    throw new AnnuletError({
      code: "seam-mismatch",
      message: "the pattern's two ends of one tile do not match, so neighbouring tiles would not close",
      path: "pattern.regions",
      hint: "move art that only just touches the tile's border by a few hundredths of a millimetre",
    });
  }
  rights.forEach(({ piece, at }, i) => {
    piece[at] = { ...piece[at], y: lefts[i].piece[lefts[i].at].y };
  });
}

function closePieces(pieces: readonly LevelPoint[][], left: number, right: number): LevelRing[] {
  const open = new Set(pieces);
  const rings: LevelRing[] = [];
  for (const first of pieces) {
    if (!open.has(first)) continue;
    const ring: LevelPoint[] = [];
    let piece = first;
    do {
      open.delete(piece);
      ring.push(...piece);
      piece = nextPiece(pieces, piece[piece.length - 1], left, right);
    } while (piece !== first);
    rings.push(ring);
  }
  return rings;
}

function nextPiece(pieces: readonly LevelPoint[][], end: LevelPoint, left: number, right: number): LevelPoint[] {
  const down = end.x === left;
  let best: LevelPoint[] | undefined;
  for (const piece of pieces) {
    const start = piece[0];
    if (start.x !== (down ? left : right)) continue;
    if (down ? start.y > end.y : start.y < end.y) continue;
    if (best === undefined || Math.abs(start.y - end.y) < Math.abs(best[0].y - end.y)) best = piece;
  }
  if (best === undefined) throw new AnnuletError({ code: "internal", message: "a cut region does not close" });
  return best;
}

function twiceArea(ring: LevelRing): number {
  let sum = 0;
  let before = ring[ring.length - 1];
  const { x: ox, y: oy } = ring[0];
  for (const point of ring) {
    sum += (before.x - ox) * (point.y - oy) - (point.x - ox) * (before.y - oy);
    before = point;
  }
  return sum;
}

function contains(ring: LevelRing, point: LevelPoint): boolean {
  let inside = false;
  let before = ring[ring.length - 1];
  for (const vertex of ring) {
    if (vertex.y > point.y !== before.y > point.y) {
      const x = before.x + ((vertex.x - before.x) * (point.y - before.y)) / (vertex.y - before.y);
      if (x > point.x) inside = !inside;
    }
    before = vertex;
  }
  return inside;
}
