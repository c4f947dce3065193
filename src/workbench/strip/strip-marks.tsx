/**
 * The band's and the seat's edges, the tiles' borders, and the symmetry's elements as crystallographic tables draw them: mirrors
 * solid, glides dashed, centres of half turns as filled lenses.
 */
import type { GroupElements } from "./snapping.js";
import { rowMiddles, type StripLayout } from "./strip-layout.js";

/** Axes go beyond the tile by this, CSS pixels, and half of a lens across and along the band. */
const OVERHANG = 8;
const LENS = { long: 7, wide: 3.2 } as const;

interface Marked {
  readonly layout: StripLayout;
  readonly scale: number;
}

/** The band, over the whole strip. */
export function StripEdges({ layout: { bandWidth, from, to } }: Pick<Marked, "layout">) {
  return (
    <g class="strip-edges">
      <rect class="band-ground" x={from} width={to - from} y={-bandWidth / 2} height={bandWidth} />
      {[-1, 1].map((side) => (
        <line key={side} class="band-edge" x1={from} x2={to} y1={(side * bandWidth) / 2} y2={(side * bandWidth) / 2} />
      ))}
    </g>
  );
}

/** The band behind the strip's end, as far as stones stand there. */
export function BareEnd({ layout: { bandWidth, to }, end }: Pick<Marked, "layout"> & { readonly end: number }) {
  if (end <= to) return null;
  return (
    <g class="strip-edges bare-end">
      <rect class="band-ground" x={to} width={end - to} y={-bandWidth / 2} height={bandWidth} />
      {[-1, 1].map((side) => (
        <line key={side} class="band-edge" x1={to} x2={end} y1={(side * bandWidth) / 2} y2={(side * bandWidth) / 2} />
      ))}
    </g>
  );
}

/** Borders of a lane's tiles, and the lane's own edges. */
export function TileBorders({ layout }: Pick<Marked, "layout">) {
  const { seatLength, laneMiddle, copies, period, tileWidth, tiles, from, to } = layout;
  const half = seatLength / 2;
  const borders = copies.flatMap((u) => Array.from({ length: tiles }, (_, tile) => u + tile * tileWidth));
  const rows = rowMiddles(layout).slice(1);
  const level = (v: number, kind: string) => (
    <line key={`${kind} ${v}`} class={kind} x1={from} x2={to} y1={-v} y2={-v} />
  );
  return (
    <g class="tile-borders">
      {[...borders, copies[copies.length - 1] + period].map((u) => (
        <line key={u} class="tile-border" x1={u} x2={u} y1={-laneMiddle - half} y2={-laneMiddle + half} />
      ))}
      {rows.map((v) => level(laneMiddle + v - layout.tileHeight / 2, "tile-border"))}
      {[-1, 1].map((side) => level(laneMiddle + side * half, "seat-edge"))}
    </g>
  );
}

/** The elements on the own tile and its borders. */
export function SymmetryMarks({ layout, elements, scale }: Marked & { readonly elements: GroupElements }) {
  const { tileWidth, tiles, seatLength, laneMiddle, period } = layout;
  const over = OVERHANG / scale;
  const inTiles = (places: readonly number[]): number[] =>
    Array.from({ length: tiles + 1 }, (_, tile) => places.map((x) => tile + x))
      .flat()
      .filter((x) => x <= tiles)
      .map((x) => x * tileWidth);
  const rows = rowMiddles(layout).map((v) => laneMiddle + v);
  const half = seatLength / 2 + over;
  return (
    <g class="symmetry">
      {inTiles(elements.mirrors).map((u) => (
        <line key={`mirror ${u}`} class="mirror" x1={u} x2={u} y1={-laneMiddle - half} y2={-laneMiddle + half} />
      ))}
      {elements.middle === "none"
        ? null
        : rows.map((v) => <line key={v} class={elements.middle} x1={-over} x2={period + over} y1={-v} y2={-v} />)}
      {rows.flatMap((v) =>
        inTiles(elements.centres).map((u) => (
          <path key={`${u} ${v}`} class="two-fold" d={lens()} transform={`translate(${u} ${-v}) scale(${1 / scale})`} />
        )),
      )}
    </g>
  );
}

/** About the origin, CSS pixels. */
function lens(): string {
  const { long, wide } = LENS;
  const radius = (long ** 2 + wide ** 2) / (2 * wide);
  return `M0 ${-long}A${radius} ${radius} 0 0 1 0 ${long}A${radius} ${radius} 0 0 1 0 ${-long}Z`;
}
