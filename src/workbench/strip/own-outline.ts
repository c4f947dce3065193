/**
 * The lines of a placed drawing by itself, before the symmetry completes it: asked once of a design that has nothing else, and
 * moved, sized and turned with its place while it is dragged. What does not grow with a drawing, the width of ribbons say, is right
 * again with the worker's answer.
 */
import { type Path, valueAt } from "../state/json-text.js";
import { isPart } from "./art-entries.js";
import type { PlacedArt } from "./placed-art.js";
import type { ShownTile } from "./shared-view.js";
import type { ArtPoint } from "./tile-units.js";

/** Rings in the drawing's unit, from the own tile's left border and its row's middle line. */
export type ArtRings = readonly (readonly ArtPoint[])[];

/** What joins a region with others, or is made of its completed art. */
const WITH_OTHERS = ["within", "without", "beads", "tiles"] as const;

/** The design with one region alone, which nothing but the tiles repeats; undefined where there is none at the place. */
export function aloneDocument(document: unknown, path: Path): Readonly<Record<string, unknown>> | undefined {
  const region = valueAt(document, path);
  if (!isPart(document) || !isPart(region) || path.length < 3 || path[path.length - 2] !== "regions") return undefined;
  const alone = Object.fromEntries(
    Object.entries(region).filter(([key]) => !(WITH_OTHERS as readonly string[]).includes(key)),
  );
  const { beads: _, stones: __, lettering: ___, hallmark: ____, ...bare } = document;
  const holder = path.slice(0, -2);
  const replaced = (part: unknown, keys: Path): unknown => {
    const [key, ...rest] = keys;
    if (key === undefined) return { ...(part as object), symmetry: "p1", regions: [alone] };
    if (Array.isArray(part)) {
      return part.map((entry, i) => (i === key ? replaced(entry, rest) : { ...entry, regions: [] }));
    }
    const others = isPart(part) && part.regions !== undefined ? { regions: [] } : {};
    return { ...(part as object), ...others, [key]: replaced((part as Record<string, unknown>)[key], rest) };
  };
  return { ...bare, pattern: replaced(document.pattern, holder.slice(1)) };
}

/** The own rings of a tile that holds one drawing alone: each in the tile in which it lies nearest to its place. */
export function ownRings(
  { regions, fit, tiles }: Pick<ShownTile, "regions" | "fit" | "tiles">,
  { at }: PlacedArt,
  unit: "tile" | "mm",
): ArtRings {
  const { tileWidth, tileHeight, rows, aspect } = fit;
  const [sx, sy] = unit === "mm" ? [1, 1] : [tileWidth, tileHeight / aspect];
  const row = -((rows - 1) / 2) * tileHeight;
  const period = tiles * tileWidth;
  return regions.flatMap(({ rings }) => {
    const [outer] = rings;
    if (outer === undefined) return [];
    const [us, vs] = [0, 1].map((axis) => outer.map((point) => point[axis]));
    const middle = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
    if (Math.abs(middle(vs) - row) > tileHeight / 2 && rows > 1) return [];
    const shift = period * Math.round((at[0] * sx - middle(us)) / period);
    return rings.map((ring) => ring.map(([u, v]): ArtPoint => [(u + shift) / sx, (v - row) / sy]));
  });
}

const DEGREE = Math.PI / 180;

/** Path data of rings that were drawn at one place, at another. */
export function movedRings(rings: ArtRings, from: PlacedArt, to: PlacedArt): string {
  const factor = to.scale / from.scale;
  const angle = (to.turn - from.turn) * DEGREE;
  const [cos, sin] = [factor * Math.cos(angle), factor * Math.sin(angle)];
  const text = ([x, y]: ArtPoint): string => {
    const [dx, dy] = [x - from.at[0], y - from.at[1]];
    return `${short(to.at[0] + cos * dx - sin * dy)} ${short(to.at[1] + sin * dx + cos * dy)}`;
  };
  return rings.map((ring) => `M ${ring.map(text).join(" L ")} Z`).join(" ");
}

function short(value: number): string {
  return String(Number(value.toFixed(5)));
}
