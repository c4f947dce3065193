/**
 * What the gate finds wrong, and where.
 */
import type { Point3 } from "../math/point.js";

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
  | "inside-out";

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
export const PLACES_SHOWN = 10;

/** Collects the places of one kind of fault. */
export class FaultCounter {
  count = 0;
  readonly places: Point3[] = [];

  /** @param place is only asked while places are still kept; undefined where there is none */
  add(place: () => Point3 | undefined): void {
    const found = this.places.length < PLACES_SHOWN ? place() : undefined;
    if (found !== undefined) this.places.push(found);
    this.count++;
  }
}

/** `count` things, in words: "1 edge", "3 edges". */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
