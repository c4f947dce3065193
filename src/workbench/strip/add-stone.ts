/**
 * A stone put at a place of the tile: alike the group that is chosen, or a small one to begin with.
 */
import { type Path, valueAt } from "../state/json-text.js";
import { isPart, laneNames } from "./art-entries.js";
import type { ArtPoint } from "./tile-units.js";

/** Of the group that is chosen what a new one takes over. */
const ALIKE = ["cut", "size", "width", "narrow", "gem", "proportions", "level", "setting", "through"] as const;

/** A stone that most bands have room for. Chosen. */
const FIRST = { size: 1.2, setting: { form: "flush" } } as const;

export interface StonePlacing {
  /** In the tile. */
  readonly at: ArtPoint;
  /** The lane that was pressed; undefined for the lowest. */
  readonly lane: string | undefined;
  readonly selected: Path | undefined;
}

/** The document's groups with the new one at their end. */
export function withStone(document: unknown, { at, lane, selected }: StonePlacing): unknown[] {
  const groups = valueAt(document, ["stones"]);
  const list = Array.isArray(groups) ? groups : [];
  const [key, index] = selected ?? [];
  const chosen = key === "stones" && typeof index === "number" ? list[index] : undefined;
  const like = isPart(chosen) ? Object.fromEntries(ALIKE.flatMap((name) => entryOf(chosen, name))) : FIRST;
  const { size, setting, ...rest } = { ...FIRST, ...like };
  const named = laneNames(document).length > 0 && lane !== undefined ? { lane } : {};
  return [...list, { ...rest, size, place: { form: "tile", at, ...named }, setting }];
}

function entryOf(part: Readonly<Record<string, unknown>>, name: string): [string, unknown][] {
  return part[name] === undefined ? [] : [[name, part[name]]];
}

/** The groups without one; undefined where none is left. */
export function withoutStone(document: unknown, group: number): unknown[] | undefined {
  const groups = valueAt(document, ["stones"]);
  const left = Array.isArray(groups) ? groups.toSpliced(group, 1) : [];
  return left.length === 0 ? undefined : left;
}
