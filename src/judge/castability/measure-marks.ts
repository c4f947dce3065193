/**
 * What is measured on texts and other marks: their lines, how deep these are for their width, the metal under those in the
 * bore, and the room between them.
 */
import { toGrid } from "../../flat/grid.js";
import { type GridRegion, grow, intersect } from "../../flat/polygons.js";
import { tileOutlines } from "../../relief/tile-outlines.js";
import { narrowest } from "../details/narrow.js";
import { type MarkRegion, markPlace, markRegion, marksOf } from "./mark-regions.js";
import { chordsAt } from "./measure-section.js";
import { type JudgedPiece, type Measured, worst } from "./piece.js";

export interface MarkMeasures {
  readonly line: Measured | undefined;
  readonly groove: Measured | undefined;
  readonly "groove-depth": Measured | undefined;
  readonly shank: Measured | undefined;
  readonly marks: Measured | undefined;
}

/** Limits up to which is looked, in each rule's unit. */
export type MarkLimits = Readonly<Record<"line" | "groove" | "groove-depth" | "marks", number>>;

/** Places that are told of each. */
const PLACES = 10;

export function measureMarks(piece: JudgedPiece, limits: MarkLimits): MarkMeasures {
  const regions = marksOf(piece.marks).map(markRegion);
  const of = (mode: "raised" | "sunk") => regions.filter(({ mark }) => mark.body.mode === mode);
  const width = (limit: number) => (one: MarkRegion) => lineWidth(one, limit, true);
  return {
    line: worst("at least", of("raised").map(width(limits.line))),
    groove: worst("at least", of("sunk").map(width(limits.groove))),
    "groove-depth": worst(
      "at most",
      of("sunk").map((one) => depthOverWidth(one, limits["groove-depth"])),
    ),
    shank: worst(
      "at least",
      of("sunk").map((one) => metalUnder(one, piece)),
    ),
    marks: roomBetween(regions, piece, limits.marks),
  };
}

function lineWidth(one: MarkRegion, limit: number, tips: boolean): Measured | undefined {
  const { mark, grid, region } = one;
  const found = narrowest(region, limit, { scale: grid.scale, tips });
  if (found === undefined) return undefined;
  const places = found.places.slice(0, PLACES).map(({ at }) => markPlace(mark, [at[0], at[1]]));
  return {
    figure: found.width,
    places,
    more: `${found.tip ? "where it runs out to a point " : ""}in ${mark.body.names.join(", ")}`,
  };
}

function depthOverWidth(one: MarkRegion, limit: number): Measured | undefined {
  const depth = one.mark.body.height;
  const found = lineWidth(one, depth / limit, false);
  if (found === undefined) return undefined;
  const more = `${depth.toFixed(2)} mm deep and ${found.figure.toFixed(2)} mm wide ${found.more}`;
  return { ...found, figure: depth / found.figure, more };
}

/** The metal between the floor of a mark in the bore and the outside straight above it, relief not counted. */
function metalUnder({ mark }: MarkRegion, { profile }: JudgedPiece): Measured | undefined {
  const { surface, body } = mark;
  if (surface.name !== "bore") return undefined;
  const { wrap } = surface;
  const under = body.outline.flat(2).flatMap(([u, v]): Measured[] => {
    const angle = wrap.angleAt(u);
    const [w] = wrap.lineAt(angle).point(v, 0);
    const [lowest] = chordsAt(profile.sectionAt(angle).polyline, w);
    if (lowest === undefined) return [];
    return [
      {
        figure: lowest.figure - body.height,
        places: [markPlace(mark, [u, v])],
        more: `under ${body.names.join(", ")}`,
      },
    ];
  });
  return worst("at least", under);
}

/** Marks on one face of the band, or of one of its rails. */
function sameFace(a: MarkRegion, b: MarkRegion): boolean {
  const side = ({ mark: { surface } }: MarkRegion) =>
    Math.sign(surface.wrap.lineAt(surface.wrap.startAngle).point(0, 0)[0]);
  const [from, to] = [a.mark.surface.name, b.mark.surface.name];
  return from === to && (from !== "rail" || side(a) === side(b));
}

/** The least room between two marks, or a mark on the seat and the pattern; 0 where they overlap. */
function roomBetween(regions: readonly MarkRegion[], piece: JudgedPiece, limit: number): Measured | undefined {
  const pairs = regions.flatMap((a, i) => {
    const others = regions.slice(i + 1).filter((b) => sameFace(a, b));
    return others.map((b) => room(a, fitted(b, a), limit, `between ${nameOf(a)} and ${nameOf(b)}`));
  });
  const onSeat = regions.filter(({ mark }) => mark.surface.name === "seat");
  const patterned = onSeat.map((one) =>
    room(one, patternFor(one, piece), limit, `between ${nameOf(one)} and the pattern`),
  );
  return worst("at least", [...pairs, ...patterned]);
}

function nameOf({ mark }: MarkRegion): string {
  return mark.body.names.join(", ");
}

/** Another mark's region on the grid of this one, a turn before and after too. */
function fitted({ mark, region, grid }: MarkRegion, to: MarkRegion): GridRegion {
  const share = to.mark.surface.wrap.referenceRadius / mark.surface.wrap.referenceRadius;
  const turn = to.mark.surface.wrap.round * to.grid.scale;
  const [along, across] = [(share * to.grid.scale) / grid.scale, to.grid.scale / grid.scale];
  return [-turn, 0, turn].flatMap((shift) =>
    region.map((ring) => ring.map(({ x, y }) => ({ x: Math.round(x * along + shift), y: Math.round(y * across) }))),
  );
}

/** The outlines of all that the pattern raises, sinks and pierces, on the grid of a mark on the seat. */
function patternFor({ mark, grid }: MarkRegion, { pattern, wrap }: JudgedPiece): GridRegion {
  const share = mark.surface.wrap.referenceRadius / wrap.referenceRadius;
  const whole = { tileWidth: wrap.round, seatLength: wrap.seatLength, tiles: 1, origin: [0, 0] as const };
  const rings = pattern.bodies
    .filter(({ surface }) => surface === undefined)
    .flatMap((body) => {
      const alone = body.seam === undefined && body.period === undefined;
      return tileOutlines(alone ? { ...body, period: wrap.round } : body, whole);
    });
  return rings.map((ring) =>
    toGrid(
      grid,
      ring.map(([u, v]) => [u * share, v] as const),
    ),
  );
}

/** Room is found to this, mm. */
const PRECISION = 2e-3;

/** How far a mark can grow before it meets another region; undefined where that is the limit or more. */
function room(one: MarkRegion, other: GridRegion, limit: number, more: string): Measured | undefined {
  const { mark, grid, region } = one;
  const met = (by: number) => intersect(by === 0 ? region : grow(region, by * grid.scale), other);
  if (met(limit).length === 0) return undefined;
  let [good, bad, found] = [0, limit, met(limit)];
  const overlap = met(0);
  if (overlap.length > 0) [bad, found] = [0, overlap];
  while (bad - good > PRECISION) {
    const middle = (good + bad) / 2;
    const meeting = met(middle);
    if (meeting.length > 0) [bad, found] = [middle, meeting];
    else good = middle;
  }
  const places = found.slice(0, PLACES).map(([{ x, y }]) => markPlace(mark, [x / grid.scale, y / grid.scale]));
  return { figure: bad === 0 ? 0 : (good + bad) / 2, places, more: bad === 0 ? `${more}: they overlap` : more };
}
