/**
 * A region made of a file that came in.
 */
import { type Path, valueAt } from "../state/json-text.js";

/** How far art stands out that nobody has given a height yet, mm. Chosen: seen at once, and castable. */
const FIRST_HEIGHT = 0.3;

/** The field that names a drawing or an image. */
function artField(name: string): "svg" | "image" {
  return /\.png$/i.test(name) ? "image" : "svg";
}

/** Where art was dropped on the tile. */
export interface ArtPlace {
  /** The list of regions in the document that are drawn there. */
  readonly regions: Path;
  /** Tile coordinates. */
  readonly at: readonly [x: number, y: number];
}

/** Share of the tile that a drawing fills where it was dropped: room is left to move it. Chosen. */
const DROPPED_SCALE = 0.5;

/** The regions of a list with one more, of a file that was dropped there; an image lies over the whole tile. */
export function regionsWithDropped(document: unknown, name: string, { regions, at }: ArtPlace): readonly unknown[] {
  const list = valueAt(document, regions);
  const field = artField(name);
  const place = field === "svg" ? { place: { at, scale: DROPPED_SCALE } } : {};
  return [...(Array.isArray(list) ? list : []), { [field]: name, ...place, height: FIRST_HEIGHT }];
}

/** A document's regions with one more; undefined where its pattern is such that it has no list of them. */
export function regionsWith(document: Readonly<Record<string, unknown>>, name: string): readonly unknown[] | undefined {
  const { pattern = {} } = document;
  if (typeof pattern !== "object" || pattern === null || Array.isArray(pattern) || "lanes" in pattern) return undefined;
  const { regions = [] } = pattern as { readonly regions?: unknown };
  return Array.isArray(regions) ? [...regions, { [artField(name)]: name, height: FIRST_HEIGHT }] : undefined;
}
