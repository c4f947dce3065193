/**
 * Which tiles of a cycle carry art: the document's `tiles`.
 */
import type { Carries } from "./images.js";

/** Reads `[0, 2]` or `{ every, from }`; undefined where all tiles carry it, or where the field is none that can be read. */
export function carriesOf(tiles: unknown, cycle: number): Carries | undefined {
  const named = namedTiles(tiles, cycle);
  if (named === undefined) return undefined;
  const carrying = new Set(named);
  return (tile) => carrying.has(tile - cycle * Math.floor(tile / cycle));
}

function namedTiles(tiles: unknown, cycle: number): readonly number[] | undefined {
  if (Array.isArray(tiles)) return tiles.every(Number.isInteger) ? (tiles as number[]) : undefined;
  if (typeof tiles !== "object" || tiles === null) return undefined;
  const { every, from = 0 } = tiles as { readonly every?: unknown; readonly from?: unknown };
  if (!Number.isInteger(every) || !Number.isInteger(from) || (every as number) < 1) return undefined;
  const [step, first] = [every as number, from as number];
  return Array.from({ length: Math.max(1, Math.ceil((cycle - first) / step)) }, (_, i) => first + i * step);
}
