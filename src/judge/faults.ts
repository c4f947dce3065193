/**
 * What the gate finds wrong, and where.
 */
import type { Point3 } from "../base/math/point.js";

/** What can be wrong with a mesh. */
export type FaultCode =
  | "empty"
  | "non-finite"
  | "index-out-of-range"
  | "repeated-vertex"
  | "zero-area"
  | "open-edge"
  | "edge-used-twice"
  | "pinched-vertex"
  | "components"
  | "inside-out"
  | "crossing";

/** One kind of fault in a mesh. */
export interface Fault {
  readonly code: FaultCode;
  /** How many edges, triangles, vertices or shells have it. */
  readonly count: number;
  /** Up to ten of its places, mm. */
  readonly places: readonly Point3[];
  /** One sentence that says what and how many. */
  readonly message: string;
}

/** Places kept for each kind of fault; more would drown the message. */
const PLACES_SHOWN = 10;

/** The first places of some edges, triangles, vertices or shells; undefined where one has none. */
export function firstPlaces(items: readonly number[], placeOf: (item: number) => Point3 | undefined): Point3[] {
  const places: Point3[] = [];
  for (let i = 0; i < items.length && places.length < PLACES_SHOWN; i++) {
    const place = placeOf(items[i]);
    if (place !== undefined) places.push(place);
  }
  return places;
}

/** `count` things, in words: "1 edge", "3 edges". */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
