/**
 * Decides what of a height field is there: what is above the level, without specks and pinholes.
 *
 * Heights near the level would let the outline wander from noise to noise. So small patches that rise to no more than
 * twice the level are dropped, small gaps that fall below it are closed, and no height is left nearer to the level than
 * a fifth of it, which keeps the outline clear of the grid's points.
 */
import type { HeightField } from "./height-field.js";

/** Patches and gaps of fewer samples are looked at. */
const SMALL = 16;

/** A patch is a speck where it rises to at most this many levels. */
const SPECK_RISE = 2;

/** Share of the level by which heights keep away from it. */
const CLEAR = 0.2;

/** The field with its heights settled. */
export function settle(field: HeightField): HeightField {
  const heights = field.heights.slice();
  const { level } = field;
  for (const patch of patchesOf(field)) {
    if (patch.places.length >= SMALL) continue;
    if (patch.there && patch.highest <= SPECK_RISE * level) for (const place of patch.places) heights[place] = 0;
    if (!patch.there) for (const place of patch.places) heights[place] = (1 + CLEAR) * level;
  }
  heights.forEach((height, place) => {
    if (height > level) heights[place] = Math.max(height, (1 + CLEAR) * level);
    else heights[place] = Math.min(height, (1 - CLEAR) * level);
  });
  if (field.repeats) copyFirstColumn(field, heights);
  return { ...field, heights };
}

interface Patch {
  readonly there: boolean;
  readonly places: readonly number[];
  readonly highest: number;
}

/** Samples that hang together along rows and columns and are alike in being there or not. */
function patchesOf({ columns, rows, heights, repeats, level }: HeightField): Patch[] {
  const stride = columns + 1;
  const width = repeats ? columns : stride;
  const seen = new Uint8Array(heights.length);
  const patches: Patch[] = [];
  for (let start = 0; start < heights.length; start++) {
    if (seen[start] === 1 || start % stride >= width) continue;
    const there = heights[start] > level;
    const places = [start];
    let highest = 0;
    seen[start] = 1;
    // The list grows while it is walked.
    for (const place of places) {
      highest = Math.max(highest, heights[place]);
      const [x, y] = [place % stride, Math.floor(place / stride)];
      const beside = repeats
        ? [y * stride + ((x + 1) % width), y * stride + ((x + width - 1) % width)]
        : [...(x + 1 < width ? [place + 1] : []), ...(x > 0 ? [place - 1] : [])];
      const around = [...beside, ...(y < rows ? [place + stride] : []), ...(y > 0 ? [place - stride] : [])];
      for (const next of around) {
        if (seen[next] === 1 || heights[next] > level !== there) continue;
        seen[next] = 1;
        places.push(next);
      }
    }
    patches.push({ there, places, highest });
  }
  return patches;
}

function copyFirstColumn({ columns, rows }: HeightField, heights: Float64Array): void {
  for (let y = 0; y <= rows; y++) heights[y * (columns + 1) + columns] = heights[y * (columns + 1)];
}
