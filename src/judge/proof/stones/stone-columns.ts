/**
 * Columns through the stones themselves: some hundreds through each that is not another's image, so that one setting of many that
 * is missing, shifted or doubled is met for certain.
 */
import type { Band } from "../../../band/band.js";
import type { BandSurface } from "../../../band/surface/surface.js";
import type { Point3 } from "../../../base/math/point.js";
import { TURN } from "../../../base/units.js";
import { type Column, columnAt, type Place } from "../columns.js";
import { inDisc } from "./in-disc.js";
import type { StoneView } from "./stone-view.js";
import { asideOf } from "./surrounded.js";

/** Columns through a stone and what stands beside it, and through all stones at most (chosen: a tenth of a second or so). */
const A_STONE = 400;
const MOST = 8192;

/** Columns through a grain or prong, so far beside its axis, mm (chosen: within the thinnest). */
const A_POST = 6;
const BESIDE_AXIS = 0.04;

export interface StoneColumnsOptions {
  readonly band: Band;
  readonly wrap: BandSurface;
  readonly stones: readonly StoneView[];
  /** Where grains and prongs stand. */
  readonly posts: readonly Point3[];
  /** Of how many turned images of a unit the mesh is made: stones of all units share their columns. */
  readonly units: number;
}

/** They stand for nothing in sums: their weight is 0. */
export function stoneColumns(options: StoneColumnsOptions): Column[] {
  const { band, wrap, stones, posts, units } = options;
  if (stones.length === 0) return [];
  const total = Math.min(MOST, Math.ceil(A_STONE * Math.max(1, stones.length / units)));
  const through = Math.min(MOST, Math.ceil(A_POST * Math.max(1, posts.length / units)));
  const { polyline } = band;
  const known = band.revolved ? { line: wrap.lineAt(0), polyline } : undefined;
  const columnThrough = ([x, y, w]: Point3): Column => {
    const around = Math.atan2(y, x);
    const angle = around < 0 ? around + TURN : around;
    const section = known ?? { line: wrap.lineAt(angle), polyline: band.sectionAt(angle).polyline };
    const place = placeAt(Math.hypot(x, y), w, { angle, u: wrap.uAt(angle), section });
    return { place, stand: columnAt(place), group: 0, weight: 0 };
  };
  const ofStones = Array.from({ length: total }, (_, k): Point3 => {
    const stone = stones[k % stones.length];
    const [x, y] = inDisc(k);
    const reach = asideOf(stone) + BESIDE;
    return stone.space([reach * x, reach * y, -stone.girdleLevel]);
  });
  const ofPosts = Array.from({ length: posts.length === 0 ? 0 : through }, (_, k): Point3 => {
    const [x, y, z] = posts[k % posts.length];
    const [along, across] = inDisc(k).map((off) => BESIDE_AXIS * off);
    const radius = Math.hypot(x, y);
    return [x - (along * y) / radius, y + (along * x) / radius, z + across];
  });
  return [...ofStones, ...ofPosts].map(columnThrough);
}

/** Metal beside all that is looked at too, mm (chosen). */
const BESIDE = 0.2;

/** A column on the seat or, beside it, on the rest of the outside. */
function placeAt(radius: number, w: number, { angle, u, section }: Pick<Place, "angle" | "u" | "section">): Place {
  const [v] = section.line.inverse(w, radius);
  const { reach } = section.line;
  return Math.abs(v) < reach
    ? { on: "seat", angle, u, across: v, section }
    : { on: "rest", angle, u, across: w, section };
}
