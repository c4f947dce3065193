/**
 * Numbers on a rectangular grid, and lines of it worked one by one.
 */

export interface NumberGrid {
  readonly width: number;
  readonly height: number;
  /** Line after line. */
  readonly data: Float64Array;
}

/** A grid of the given size, all 0. */
export function emptyGrid(width: number, height: number): NumberGrid {
  return { width, height, data: new Float64Array(width * height) };
}

/** The grid with x and y exchanged. */
export function transpose({ width, height, data }: NumberGrid): NumberGrid {
  const turned = emptyGrid(height, width);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) turned.data[x * height + y] = data[y * width + x];
  }
  return turned;
}

/** Weights of the numbers that one result is made of: of `first` and those that follow. */
export interface Taps {
  readonly first: number;
  readonly weights: readonly number[];
  /** Whether the result is kept between the lowest and the highest of the numbers. */
  readonly bounded: boolean;
}

/** How a line goes on beyond its ends: its last number stays, or it begins anew. */
export type Beyond = "stays" | "repeats";

/** Each line of the grid worked into as many numbers as there are taps. */
export function applyTaps({ width, height, data }: NumberGrid, taps: readonly Taps[], beyond: Beyond): NumberGrid {
  const result = emptyGrid(taps.length, height);
  const index = (x: number) =>
    beyond === "repeats" ? ((x % width) + width) % width : Math.min(width - 1, Math.max(0, x));
  taps.forEach(({ first, weights, bounded }, i) => {
    const places = weights.map((_, k) => index(first + k));
    for (let y = 0; y < height; y++) {
      let [sum, low, high] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      for (let k = 0; k < places.length; k++) {
        const number = data[y * width + places[k]];
        sum += weights[k] * number;
        if (number < low) low = number;
        if (number > high) high = number;
      }
      result.data[y * taps.length + i] = bounded ? Math.min(high, Math.max(low, sum)) : sum;
    }
  });
  return result;
}
