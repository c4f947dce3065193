/**
 * A motif put where another was: with the ribbon that its lines are meant for, or without one where it is filled.
 */
import type { MotifEntry } from "../../index.js";
import type { Path } from "../state/json-text.js";
import { isObject } from "./ways.js";

/** Where nothing is known of the ring yet, mm: a usual tile. Chosen. */
export const USUAL_TILE = 6;

/** Ribbons are a share of the tile's width, to a hundredth of a millimetre. */
const DIGITS = 100;

/** The ribbon of a motif's lines in a tile; undefined where it is filled. */
export function ribbonOf({ ribbon }: MotifEntry, tileWidth: number): Record<string, unknown> | undefined {
  if (ribbon === undefined) return undefined;
  const width = Math.round(ribbon.share * tileWidth * DIGITS) / DIGITS;
  return { width, join: ribbon.join, ends: ribbon.ends };
}

/**
 * What to write where.
 *
 * @param owner place of the region, or of another part that holds a motif
 * @param part what stands there
 * @param tileWidth mm
 */
export function motifValues(
  owner: Path,
  part: unknown,
  motif: MotifEntry,
  tileWidth: number,
): (readonly [Path, unknown])[] {
  const name = [[...owner, "motif"], { name: motif.name }] as const;
  const isRegion = isObject(part) && !Object.hasOwn(part, "of");
  if (!isRegion) return [name];
  const ribbon = ribbonOf(motif, tileWidth);
  const needsNone = ribbon === undefined && !Object.hasOwn(part, "ribbon");
  return needsNone ? [name] : [name, [[...owner, "ribbon"], ribbon]];
}
