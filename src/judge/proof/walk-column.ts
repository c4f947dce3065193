/**
 * A walk along a column that leans: place by place, each with its own foot on the seat, since the column crosses walls.
 */
import type { SurfaceLine } from "../../band/surface/surface.js";
import { largestWhere } from "../../base/math/largest.js";
import type { Stand } from "./columns.js";
import type { Stretch } from "./held.js";

/** Feet are found to this, mm: a tenth of the finest tolerance. */
const FOOT = 1e-4;

/** What is found at a place, mm along the column. */
export interface Found {
  readonly t: number;
}

/** What is found at so many steps along a column: of each step its beginning and its end. */
export function* stepsAlong<Place extends Found>(
  [from, to]: Stretch,
  count: number,
  find: (t: number) => Place,
): Generator<readonly [Place, Place]> {
  let before = find(from);
  for (let i = 1; i <= count; i++) {
    const here = find(from + ((to - from) * i) / count);
    yield [before, here];
    before = here;
  }
}

/** (w, r) of a place so many mm along a column. */
export function placeAt({ point, way }: Pick<Stand, "point" | "way">, t: number): readonly [w: number, r: number] {
  return [point[0] + t * way[0], point[1] + t * way[1]];
}

/** v of the place at w, beyond the seat's ends as its line goes on straight: relief may reach in beneath a rail. */
export function footAt(line: SurfaceLine, w: number): number {
  const { reach } = line;
  for (const side of [-1, 1]) {
    const beyond = (w - line.point(side * reach, 0)[0]) * side;
    if (beyond > 0) return side * (reach + beyond / line.normal(side * reach)[1]);
  }
  return largestWhere(-reach, reach, (at) => line.point(at, 0)[0] <= w, FOOT);
}
