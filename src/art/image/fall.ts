/**
 * Where a height field ends without a rail or a next tile: there it falls to nothing.
 */
import { smoothStep } from "../../base/math/smooth-step.js";
import type { MapSpec } from "../../design/art/image-map.js";
import type { RegionSpec } from "../../design/pattern/region.js";
import type { Frame } from "./frame.js";
import { emptyGrid, type NumberGrid } from "./number-grid.js";

/** Over this an edge without a rail falls to nothing, mm, where nothing is said: steep, but not upright. */
const EDGE_FALL = 0.3;

/**
 * The heights, falling at the edges.
 *
 * @param underRail how far the field goes on beneath the rails, mm; 0 where there are none
 */
export function fallAtEdges(
  { width, height, data }: NumberGrid,
  spec: RegionSpec,
  map: MapSpec,
  frame: Frame,
  underRail: number,
): NumberGrid {
  const railed = spec.mode !== "sunk" && underRail > 0;
  const sides = map.edge ?? (railed ? 0 : EDGE_FALL);
  const { step } = frame;
  const toEnd = distancesToEnd(frame);
  // What lies beneath the rails does not count as room to fall in.
  const margin = railed ? underRail : 0;
  const ends = map.edge ?? EDGE_FALL;
  const alongShare = toEnd.map((distance) => (ends === 0 ? Number(distance >= 0) : smoothStep(distance / ends)));
  const falls = emptyGrid(width, height);
  for (let y = 0; y < height; y++) {
    const distance = Math.min(y, height - 1 - y) * step[1] - margin;
    const across = sides === 0 ? 1 : smoothStep(distance / sides);
    for (let x = 0; x < width; x++) {
      falls.data[y * width + x] = data[y * width + x] * across * alongShare[x];
    }
  }
  return falls;
}

/** For each column, mm along to where nothing stands: the end of the strip, or a tile without the image; below 0 in it. */
function distancesToEnd({ columns, repeats, tiles = 1, on, step }: Frame): number[] {
  const own = columns / tiles;
  const isOn = (tile: number) => (repeats || (tile >= 0 && tile < tiles)) && (on?.(tile) ?? true);
  return Array.from({ length: columns + 1 }, (_, x) => {
    const tile = Math.floor(x / own);
    // A column between two tiles belongs to whichever has the image.
    const at = isOn(tile) || x % own !== 0 ? tile : tile - 1;
    if (!isOn(at)) return Number.NEGATIVE_INFINITY;
    const toLeft = isOn(at - 1) ? Number.POSITIVE_INFINITY : (x - at * own) * step[0];
    const toRight = isOn(at + 1) ? Number.POSITIVE_INFINITY : ((at + 1) * own - x) * step[0];
    return Math.min(toLeft, toRight);
  });
}
