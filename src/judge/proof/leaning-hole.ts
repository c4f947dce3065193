/**
 * What a column that stands along the seat's normal holds of a hole, which goes along the radius: the column comes into the
 * hole and out of it through the hole's walls, so it is asked place by place, each by its own foot on the seat.
 */
import type { SurfaceLine } from "../../band/surface/surface.js";
import type { Stand } from "./columns.js";
import { cutOut, type Held } from "./held.js";
import { lessOne } from "./intervals.js";
import { footAt, placeAt, stepsAlong } from "./walk-column.js";

/** Beside the hole, over its broken edges alone, or within what is pierced through. */
export type Pierced = "no" | "edge" | "through";

export interface LeaningHole {
  readonly line: SurfaceLine;
  readonly stand: Stand;
  /** From where to where along the column there may be metal, mm. */
  readonly stretch: readonly [from: number, to: number];
  /** Whether the place over v is pierced. */
  readonly piercedAt: (v: number) => Pierced;
}

/** Places asked along a column lie so far apart across the band at most, mm, unless they were more than the most (chosen). */
const APART = 0.08;
const MOST_PLACES = 24;

/** Halving a step so often finds walls to a tenth of the finest tolerance. */
const HALVINGS = 10;

/** A column with a hole cut out of it. */
export function withLeaningHole(held: Held, hole: LeaningHole): Held {
  const [from, to] = hole.stretch;
  const count = Math.min(MOST_PLACES, Math.ceil((Math.abs(hole.stand.way[0]) * (to - from)) / APART) + 1);
  let result = held;
  let [start, last] = [from, kindAt(hole, from)];
  for (const [before, here] of stepsAlong(hole.stretch, count, (t) => ({ t, kind: kindAt(hole, t) }))) {
    last = here.kind;
    if (here.kind === before.kind) continue;
    const wall = wallBetween(hole, before.t, here.t, before.kind);
    result = cutAs(before.kind, result, start, wall);
    start = wall;
  }
  return cutAs(last, result, start, to);
}

function cutAs(kind: Pierced, held: Held, from: number, to: number): Held {
  if (kind === "no") return held;
  if (kind === "edge") return { ...held, surely: lessOne(held.surely, from, to) };
  return cutOut(held, [from, to], [from, to]);
}

/** Where along a column one kind ends, between two places of which the first is of it. */
function wallBetween(hole: LeaningHole, from: number, to: number, kind: Pierced): number {
  let [low, high] = [from, to];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (kindAt(hole, middle) === kind) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function kindAt({ line, stand, piercedAt }: LeaningHole, t: number): Pierced {
  const [w] = placeAt(stand, t);
  const { reach } = line;
  if (w < line.point(-reach, 0)[0] || w > line.point(reach, 0)[0]) return "no";
  return piercedAt(footAt(line, w));
}
