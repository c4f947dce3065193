/**
 * Rows along lines that are drawn in the tile, in every tile that carries them, completed by the symmetry.
 */
import { ShapeDrawer } from "../art/shapes/draw-shape.js";
import type { StonePlaceOf } from "../design/stones/stone-place.js";
import { clipLines } from "../flat/clip-lines.js";
import type { Motion } from "../flat/motion.js";
import { inverseOf, movedAcross, movedAlong } from "../flat/motion.js";
import { type RunLine, runLines } from "../flat/runs.js";
import { makeStrip, repeatsOf, type Strip, steps } from "../flat/strip.js";
import { unrollLine } from "../flat/unroll.js";
import { linesWithinSeat } from "../flat/within-seat.js";
import { endOptions } from "../pattern/ends.js";
import { completeLines, type LineSource } from "../relief/art.js";
import type { DraftStone } from "./draft-stone.js";
import type { Ground } from "./ground.js";
import { type LaneSpans, laneSpans } from "./lane-spans.js";
import { type PlacedRow, placeAlong, type RowAsk, tooManyStones } from "./place-along.js";
import { seatSpot } from "./spot.js";
import { seatTrack } from "./track.js";

/** A row's clearance from what stands at the pattern's ends, in stones: a tenth shows between them. */
const CLEAR_OF_WALL = 0.6;

/** From the end itself: the stone stands within what is covered. */
const CLEAR_OF_END = 0.5;

/**
 * @param where the place's own place in the document
 * @throws AnnuletError `no-pattern`, `no-such-lane`, `stones-row-full`, `too-many-stones`, and what drawing throws
 */
export function placeOnLines(
  place: StonePlaceOf<"line">,
  ask: Omit<RowAsk, "row" | "gap" | "count" | "to" | "turn" | "where">,
  ground: Ground,
  where: string,
): PlacedRow[] {
  const spans = laneSpans(ground, place.lane, where);
  const rows: PlacedRow[] = [];
  let placed = 0;
  for (const { line, copies } of spans.places.flatMap((motion) =>
    linesAt({ place, spans, motion, size: ask.stone.length, where }, ground),
  )) {
    const left = ask.most - placed;
    const row = placeAlong(seatTrack(line, ground.wrap), {
      ...ask,
      ...place,
      row: rows.length,
      most: Math.max(left, 1),
      where,
    });
    placed += row.stones.length * copies;
    if (placed > ask.most) throw tooManyStones(placed, ask.most, where);
    const all = Array.from({ length: copies }, (_, copy) => copyOf(row, (copy * ground.wrap.round) / copies, ground));
    // What goes on from tile to tile is one row all round.
    for (const one of line.kind === "strand" ? [joined(all)] : all) rows.push(numbered(one, rows.length));
  }
  return rows;
}

/** A line of the seat, and how often it comes round the band alike. */
interface PlacedLine {
  readonly line: RunLine;
  readonly copies: number;
}

/** Whose lines are drawn, and in which span. */
interface LinesAsk {
  readonly place: StonePlaceOf<"line">;
  readonly spans: LaneSpans;
  readonly motion: Motion;
  /** Length of the stones, mm. */
  readonly size: number;
  readonly where: string;
}

function linesAt(
  { place, spans: { lane, laneFit, span, periodic }, motion, size, where }: LinesAsk,
  { wrap, tolerance, lengths, drawings, warn }: Ground,
): PlacedLine[] {
  const covered = laneFit.repeats * laneFit.tileWidth;
  const outline = lengths && {
    lengths,
    round: wrap.round,
    top: movedAlong(covered / 2, inverseOf(motion)),
    mirrored: motion.mirrored,
  };
  const options = { ...endOptions(lane.ends), outline };
  // What stands on every tile is worked on one, so that it is alike on every tile.
  const fit = place.tiles === undefined && periodic && outline === undefined ? { ...span, cycle: 1 } : span;
  const strip = makeStrip(fit, lane.symmetry, laneFit.height, tolerance, options);
  const drawer = new ShapeDrawer(strip, { named: lane.shapes, drawings, warn });
  const inside = linesWithinSeat(strip, completeLines(strip, sourceOf(place), where, drawer));
  const lines = runLines(strip, strip.periodic ? inside : clipLines(inside, ...stretchOf(strip, size)));
  const copies = repeatsOf(strip);
  const moved = lines.map(
    (line): RunLine => ({
      ...line,
      points: line.points.map(([u, v]) => [movedAlong(u, motion), movedAcross(v, motion)] as const),
    }),
  );
  if (wrap.revolved) return moved.map((line) => ({ line, copies }));
  // No two tiles are alike in space.
  return moved.flatMap((line) =>
    unrollLine(line, copies, wrap.round / copies).map((one) => ({ line: one, copies: 1 })),
  );
}

function sourceOf({ path, shape, unit, tiles }: StonePlaceOf<"line">): LineSource {
  return path === undefined ? { shape: shape as NonNullable<typeof shape>, unit, tiles } : { path, unit, tiles };
}

/** From where to where stones stand on a strip that stops, grid steps. */
function stretchOf(strip: Strip, size: number): [low: number, high: number] {
  const [low, high] = strip.stretch;
  const { beadStop } = strip;
  const clear = beadStop === undefined ? CLEAR_OF_END * size : beadStop + CLEAR_OF_WALL * size;
  const by = Math.round(steps(strip, clear));
  return [low + by, Math.max(low + by, high - by)];
}

/** A row so far on along the band. */
function copyOf(row: PlacedRow, by: number, { wrap }: Ground): PlacedRow {
  if (by === 0) return row;
  const stones = row.stones.map((stone): DraftStone => {
    const { u, v } = stone.spot.surface;
    const way = turnedWay(stone.spot.way, by / wrap.referenceRadius);
    return { ...stone, spot: { ...seatSpot(wrap, u + by, v), way } };
  });
  return { ...row, stones };
}

/** Rows of which each goes on where the one before it ends, as one. */
function joined(rows: readonly PlacedRow[]): PlacedRow {
  const times = rows.length;
  const [{ choices, length, closed }] = rows;
  const stones = rows.flatMap((row) => row.stones);
  return {
    stones: stones.map((stone, index) => ({ ...stone, row: { row: 0, index, count: stones.length, closed } })),
    choices: choices.map((choice) => ({ ...choice, count: choice.count * times })),
    length: length * times,
    closed,
  };
}

function numbered(row: PlacedRow, number: number): PlacedRow {
  return { ...row, stones: row.stones.map((stone) => ({ ...stone, row: stone.row && { ...stone.row, row: number } })) };
}

/** A direction turned about the finger axis. */
function turnedWay([x, y, z]: DraftStone["spot"]["way"], angle: number): DraftStone["spot"]["way"] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [x * cos - y * sin, x * sin + y * cos, z];
}
