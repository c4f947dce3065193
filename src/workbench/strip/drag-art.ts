/**
 * Art that is dragged: where a point comes to, snapped or not, as the document writes it.
 */
import type { FlatPoint } from "./flat-view.js";
import { type Guide, snap } from "./snapping.js";
import { rowMiddles, type StripLayout } from "./strip-layout.js";
import { type ArtPoint, type DrawingUnit, toArt, toMm, unitScale } from "./tile-units.js";

/** Points that snap to nothing are written to this, of a tile or in mm: under a micrometre on any tile. Chosen. */
const WRITTEN: Readonly<Record<DrawingUnit, number>> = { tile: 1e-4, mm: 1e-3 };

/** What an arrow key moves a point by, mm: as sizes snap. */
export const NUDGE = { coarse: 0.05, fine: 0.01 } as const;

/** v of the middle line of the row in which art is taken hold of: the lowest, where the fundamental region is shown too. */
export function ownRow(layout: StripLayout): number {
  return layout.laneMiddle + rowMiddles(layout)[0];
}

/** Where a point of the document lies on the strip, mm along it and across the seat. */
export function artOnStrip(layout: StripLayout, unit: DrawingUnit, point: ArtPoint): FlatPoint {
  const [u, v] = toMm(point, unitScale(layout, unit));
  return [u, v + ownRow(layout)];
}

/** The same place of the own tile's own row, for one on whatever copy and row. */
export function ownPlace(layout: StripLayout, [u, v]: FlatPoint): FlatPoint {
  const { period, laneMiddle } = layout;
  const middles = rowMiddles(layout).map((row) => laneMiddle + row);
  const row = middles.reduce((near, middle) => (Math.abs(v - middle) < Math.abs(v - near) ? middle : near), middles[0]);
  return [u - period * Math.floor(u / period), v - row + middles[0]];
}

/** Tile coordinates of a place on the strip, on whatever copy and row it lies. */
export function artUnder(layout: StripLayout, place: FlatPoint): ArtPoint {
  const [u, v] = ownPlace(layout, place);
  const [x, y] = toArt([u, v - ownRow(layout)], unitScale(layout, "tile"));
  return [written(x, "tile", false), written(y, "tile", false)];
}

export interface Dragged {
  /** As the document has it. */
  readonly point: ArtPoint;
  readonly to: readonly Guide[];
}

/** The point of the document for a place on the strip. @param reach mm within which it snaps; 0 for not at all */
export function dragged(
  layout: StripLayout,
  unit: DrawingUnit,
  place: FlatPoint,
  { guides, reach }: { readonly guides: readonly Guide[]; readonly reach: number },
): Dragged {
  const { point, to } = reach > 0 ? snap(place, guides, reach) : { point: place, to: [] };
  const exact = toArt([point[0], point[1] - ownRow(layout)], unitScale(layout, unit));
  const snapped = (axis: "u" | "v"): boolean => to.some((guide) => guide[axis] !== undefined);
  return { point: [written(exact[0], unit, snapped("u")), written(exact[1], unit, snapped("v"))], to };
}

/** Decimals of a snapped coordinate: its place is known exactly. */
const EXACT = 9;

function written(value: number, unit: DrawingUnit, snapped: boolean): number {
  const step = WRITTEN[unit];
  const rounded = snapped ? value : Math.round(value / step) * step;
  return Number(rounded.toFixed(EXACT)) + 0;
}

/** Most points that are shown to be taken hold of. Chosen: more are not told apart, and every one is an element of the page. */
export const MOST_HANDLES = 160;

/** The places nearest to the view's middle, no more than may be shown, in their order. */
export function nearestHandles<Handle extends { readonly place: FlatPoint }>(
  handles: readonly Handle[],
  [u, v]: FlatPoint,
): readonly Handle[] {
  if (handles.length <= MOST_HANDLES) return handles;
  const far = ({ place }: Handle): number => Math.hypot(place[0] - u, place[1] - v);
  const kept = new Set([...handles].sort((a, b) => far(a) - far(b)).slice(0, MOST_HANDLES));
  return handles.filter((handle) => kept.has(handle));
}
