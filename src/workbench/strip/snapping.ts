/**
 * Where a dragged point snaps: to the symmetry's elements, the tile's borders and the seat's edges.
 */
import type { FlatPoint } from "./flat-view.js";
import { rowMiddles, type StripLayout } from "./strip-layout.js";

/** What a point snapped to. */
export type SnapKind = "centre" | "mirror" | "middle-mirror" | "glide" | "middle" | "border" | "edge" | "point";

/** A line across the band (u), one along it (v), or a place (both); mm. */
export interface Guide {
  readonly kind: SnapKind;
  readonly u?: number;
  readonly v?: number;
}

/** The elements of a group, x in tile widths from 0 up to but without 1, as the library has them. */
export interface GroupElements {
  readonly mirrors: readonly number[];
  readonly middle: "mirror" | "glide" | "none";
  readonly centres: readonly number[];
}

/** Everything that a point of the own tile may snap to, those of its neighbours' borders among them. */
export function guidesOf(layout: StripLayout, { mirrors, middle, centres }: GroupElements): Guide[] {
  const { tileWidth, tiles, seatLength, laneMiddle } = layout;
  const inTiles = (places: readonly number[]): number[] =>
    Array.from({ length: tiles + 2 }, (_, i) => i - 1)
      .flatMap((tile) => places.map((x) => (tile + x) * tileWidth))
      .filter((u) => u >= -tileWidth && u <= (tiles + 1) * tileWidth);
  const rows = rowMiddles(layout).map((v) => laneMiddle + v);
  const borders = Array.from({ length: tiles + 1 }, (_, tile) => tile * tileWidth);
  return [
    ...rows.flatMap((v) => inTiles(centres).map((u): Guide => ({ kind: "centre", u, v }))),
    ...inTiles(mirrors).map((u): Guide => ({ kind: "mirror", u })),
    ...(middle === "none" ? [] : rows.map((v): Guide => ({ kind: middle === "glide" ? "glide" : "middle-mirror", v }))),
    ...borders.map((u): Guide => ({ kind: "border", u })),
    ...rows.slice(1).map((v, i): Guide => ({ kind: "border", v: (v + rows[i]) / 2 })),
    ...[-1, 1].map((side): Guide => ({ kind: "edge", v: laneMiddle + (side * seatLength) / 2 })),
  ];
}

export interface Snapped {
  readonly point: FlatPoint;
  /** What it snapped to: a place, or at most one line each way. */
  readonly to: readonly Guide[];
}

/** The point, or what is within reach of it: places before lines. */
export function snap([u, v]: FlatPoint, guides: readonly Guide[], reach: number): Snapped {
  const nearest = (among: readonly Guide[], distance: (guide: Guide) => number): Guide | undefined => {
    let best: Guide | undefined;
    let least = reach;
    for (const guide of among) {
      const far = distance(guide);
      if (far > least || (far === least && best !== undefined)) continue;
      [best, least] = [guide, far];
    }
    return best;
  };
  const [places, lines] = [guides.filter(isPlace), guides.filter((guide) => !isPlace(guide))];
  const place = nearest(places, (guide) => Math.hypot((guide.u ?? 0) - u, (guide.v ?? 0) - v));
  if (place?.u !== undefined && place.v !== undefined) return { point: [place.u, place.v], to: [place] };
  const upright = nearest(
    lines.filter((guide) => guide.u !== undefined),
    (guide) => Math.abs((guide.u ?? 0) - u),
  );
  const level = nearest(
    lines.filter((guide) => guide.v !== undefined),
    (guide) => Math.abs((guide.v ?? 0) - v),
  );
  const to = [upright, level].filter((guide): guide is Guide => guide !== undefined);
  return { point: [upright?.u ?? u, level?.v ?? v], to };
}

function isPlace({ u, v }: Guide): boolean {
  return u !== undefined && v !== undefined;
}
