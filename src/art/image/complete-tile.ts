/**
 * Samples of one tile as the symmetry completes them, and side by side.
 */
import type { TileOperation } from "../../base/frieze/symmetry.js";
import { emptyGrid, type NumberGrid } from "./number-grid.js";

/**
 * What the group makes of a tile: of all images the highest, as overlapping art is united.
 *
 * @param tile with its right edge, the left of the next, as its last column
 */
export function completeTile(tile: NumberGrid, operations: readonly TileOperation[]): NumberGrid {
  if (operations.length === 1) return tile;
  const [width, height] = [tile.width - 1, tile.height - 1];
  const result = emptyGrid(tile.width, tile.height);
  for (let y = 0; y <= height; y++) {
    for (let x = 0; x <= width; x++) {
      let most = 0;
      for (const { flipX, flipY, shift } of operations) {
        const from = (((flipX ? -x : x) + shift * width + 2 * width) % width) + tile.width * (flipY ? height - y : y);
        most = Math.max(most, tile.data[from]);
      }
      result.data[y * tile.width + x] = most;
    }
  }
  return result;
}

/** The grid without its last column, which is the first again. */
export function withoutLast({ width, height, data }: NumberGrid): NumberGrid {
  const open = emptyGrid(width - 1, height);
  for (let y = 0; y < height; y++) open.data.set(data.subarray(y * width, (y + 1) * width - 1), y * (width - 1));
  return open;
}

/** The grid `times` side by side, and its first column after them. */
export function withFirst({ width, height, data }: NumberGrid, times: number): NumberGrid {
  const closed = emptyGrid(times * width + 1, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < closed.width; x++) closed.data[y * closed.width + x] = data[y * width + (x % width)];
  }
  return closed;
}
