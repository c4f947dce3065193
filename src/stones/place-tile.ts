/**
 * Stones at an anchor of the tile: in every tile that carries it, completed by the group's symmetry.
 *
 * An anchor on a mirror or a two-fold centre is its own image there: one stone, as long as the stone's own symmetry lets it be
 * the same under that.
 */
import { AnnuletError } from "../base/errors.js";
import { friezeGroup, type TileOperation } from "../base/frieze/symmetry.js";
import type { Point2 } from "../base/math/point.js";
import { radians, TURN } from "../base/units.js";
import { standsOn } from "../design/cycle.js";
import type { StonePlaceOf } from "../design/stones/stone-place.js";
import type { CutName, Stone } from "../gems/stone.js";
import type { DraftStone } from "./draft-stone.js";
import type { Ground } from "./ground.js";
import { type LaneSpans, laneSpans } from "./lane-spans.js";
import { seatSpot } from "./spot.js";
import type { StoneShape } from "./stone-shape.js";

/** A stone flat on the seat. */
interface FlatStone {
  readonly u: number;
  readonly v: number;
  /** Direction of its length from +u, counter-clockwise from outside, radians. */
  readonly turn: number;
}

/** What came of an anchor. */
export interface TileStones {
  readonly stones: readonly DraftStone[];
  /** Stones that would reach beyond the pattern's ends or the seat's edge, and are left out. */
  readonly left: number;
}

/** Images this near are one, mm: a step of arithmetic. */
const SAME = 1e-6;

/** The same of directions, radians. */
const SAME_TURN = 1e-9;

/** How often a stone comes to itself in a turn about its own axis; a round one always does. */
const FOLDS: Readonly<Record<CutName, number>> = {
  round: Number.POSITIVE_INFINITY,
  oval: 2,
  marquise: 2,
  pear: 1,
  princess: 4,
  "square-step": 4,
  emerald: 2,
  baguette: 2,
  "tapered-baguette": 1,
  cabochon: 2,
};

/** How often it does. */
function foldsOf({ cut, length, width }: Stone): number {
  return cut === "cabochon" && length === width ? Number.POSITIVE_INFINITY : FOLDS[cut];
}

/**
 * Places the images of an anchor.
 *
 * @param where the place's own place in the document
 * @throws AnnuletError `no-pattern`, `no-such-lane`, `tile-not-in-cycle`, `stone-outside-tile`
 */
export function placeInTile(
  place: StonePlaceOf<"tile">,
  { stone, reach }: Pick<StoneShape, "stone" | "reach">,
  ground: Ground,
  where: string,
): TileStones {
  const spans = laneSpans(ground, place.lane, where);
  const inTile = imagesInTile(place, spans, stone, where);
  const { span, periodic } = spans;
  const on = standsOn(place.tiles, span.cycle, `${where}.tiles`);
  // A stone on the far end of a span stands in the tile after its last.
  const tiles = Array.from({ length: span.repeats + (periodic ? 0 : 1) }, (_, tile) => tile);
  const all = tiles
    .filter((tile) => on?.(tile - inTile.home) ?? true)
    .flatMap((tile) => inTile.images.map((image): FlatStone => ({ ...image, u: image.u + tile * span.tileWidth })));
  const end = span.repeats * span.tileWidth;
  // An anchor on the border of two tiles is in both.
  const apart = withoutRepeats(all, stone, periodic ? end : undefined);
  const within = periodic ? apart : apart.filter(({ u }) => u >= reach - SAME && u <= end - reach + SAME);
  const meant = periodic ? apart : apart.filter(({ u }) => u >= -SAME && u <= end + SAME);
  const laid = spans.places.flatMap((motion) =>
    within.map((one) => ({ ...one, u: one.u + motion.u, v: one.v + motion.v })),
  );
  const kept = laid.filter(({ u, v }) => isOnSeat(ground, u, v, reach));
  const asked = meant.length * spans.places.length;
  return {
    stones: kept.map(
      ({ u, v, turn }): DraftStone => ({ spot: seatSpot(ground.wrap, u, v), turn, stone, row: undefined }),
    ),
    left: asked - kept.length,
  };
}

/** The images of an anchor in one tile, in every row; and how many tiles on it stands from the one that carries it. */
function imagesInTile(
  { at: [x, y], turn, unit }: StonePlaceOf<"tile">,
  { lane, span, laneFit }: LaneSpans,
  stone: Stone,
  where: string,
): { readonly images: readonly FlatStone[]; readonly home: number } {
  const { tileWidth, tileHeight, aspect, rows } = span;
  const [sx, sy] = unit === "mm" ? [1, 1] : [tileWidth, tileHeight / aspect];
  const anchor: FlatStone = { u: x * sx, v: y * sy, turn: radians(turn) };
  requireInTile(anchor, laneFit, [x, y], where);
  const images = friezeGroup(lane.symmetry).operations.map((operation) => {
    const image = imageOf(anchor, operation, tileWidth);
    return { ...image, u: image.u - tileOf(image.u / tileWidth) * tileWidth };
  });
  const middles = Array.from({ length: rows }, (_, row) => (row - (rows - 1) / 2) * tileHeight);
  const apart = withoutRepeats(images, stone, tileWidth);
  return {
    images: middles.flatMap((middle) => apart.map((image) => ({ ...image, v: image.v + middle }))),
    home: tileOf(anchor.u / tileWidth),
  };
}

/** The tile that a place belongs to, in tile widths; what rounding alone puts beside its border stands on it. */
function tileOf(x: number): number {
  return Math.floor(x + SAME);
}

function imageOf({ u, v, turn }: FlatStone, { flipX, flipY, shift }: TileOperation, tileWidth: number): FlatStone {
  const turned = flipX ? (flipY ? turn + TURN / 2 : TURN / 2 - turn) : flipY ? -turn : turn;
  return { u: (flipX ? -u : u) + shift * tileWidth, v: flipY ? -v : v, turn: turned };
}

/** Stones of which none is another one again; `round` is the mm after which u comes again. */
function withoutRepeats<One extends FlatStone>(stones: readonly One[], stone: Stone, round: number | undefined): One[] {
  const folds = foldsOf(stone);
  const cells = new Map<string, One[]>();
  const kept: One[] = [];
  for (const one of stones) {
    const u = round === undefined ? one.u : one.u - round * Math.floor((one.u + SAME) / round);
    const cell = (du: number, dv: number) => `${Math.round(u / CELL) + du} ${Math.round(one.v / CELL) + dv}`;
    const near = AROUND.flatMap(([du, dv]) => cells.get(cell(du, dv)) ?? []);
    const isThere = near.some((other) => {
      const apart = Math.abs(other.u - u);
      const along = round === undefined ? apart : Math.min(apart, round - apart);
      return Math.hypot(along, other.v - one.v) <= SAME && isSameTurn(other.turn, one.turn, folds);
    });
    if (isThere) continue;
    const laid = { ...one, u };
    kept.push(laid);
    cells.set(cell(0, 0), [...(cells.get(cell(0, 0)) ?? []), laid]);
  }
  return kept;
}

/** Width of the cells by which what is near is found, mm: far above what is the same, far below a stone. */
const CELL = 0.1;
const AROUND = [-1, 0, 1].flatMap((du) => [-1, 0, 1].map((dv) => [du, dv] as const));

function isSameTurn(a: number, b: number, folds: number): boolean {
  if (folds === Number.POSITIVE_INFINITY) return true;
  const turns = ((a - b) * folds) / TURN;
  return Math.abs(turns - Math.round(turns)) <= SAME_TURN * folds;
}

/** Whether a stone of some reach lies on the seat where tiles keep their size and the seat gets narrower; elsewhere it does. */
function isOnSeat({ lengths, wrap }: Ground, u: number, v: number, reach: number): boolean {
  return lengths === undefined || Math.abs(v) + reach <= wrap.lineAt(wrap.angleAt(u)).reach;
}

function requireInTile(
  { u, v }: FlatStone,
  { tileWidth, height }: LaneSpans["laneFit"],
  at: Point2,
  where: string,
): void {
  if (u >= -tileWidth && u <= 2 * tileWidth && Math.abs(v) <= height / 2) return;
  throw new AnnuletError({
    code: "stone-outside-tile",
    message: "the stone's anchor lies outside the tile",
    path: `${where}.at`,
    value: at,
    allowed: "x from -1 to 2, y to half the tile's height, in tile widths",
    hint: 'a tile is 1 wide and `aspect` high; say "unit": "mm" where the place is in millimetres',
  });
}
