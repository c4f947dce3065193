/**
 * The points of a lattice round a place.
 */
import { ROW, type SeedLattice } from "./seed-lattice.js";

/** Points round a place, in cells: a cell is 1 long whatever it is in mm. */
export interface Nearby {
  readonly count: number;
  /** From the place to each point, along the band and across it. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly chance: Float64Array;
}

/**
 * Cells looked at on every side. As points leave their cells by 0.4 at most, the nearest is no farther than 1.07 cells, and
 * those left out are at least (2.5 − 0.4) ROW = 1.81 away: what a form looks for must lie within that.
 */
const NEAR = 2;

/** Fills one buffer again and again: what it gives holds until it is asked next. */
export function nearbyIn({ columns, rows, pitch, moved, chance }: SeedLattice): (u: number, v: number) => Nearby {
  const side = 2 * NEAR + 1;
  const near = {
    count: side * side,
    x: new Float64Array(side * side),
    y: new Float64Array(side * side),
    chance: new Float64Array(side * side),
  };
  return (u, v) => {
    const [along, across] = [u / pitch[0], v / pitch[1]];
    const row = Math.round(across);
    let slot = 0;
    for (let j = row - NEAR; j <= row + NEAR; j++) {
      const set = (j & 1) / 2;
      const line = (((j % rows) + rows) % rows) * columns;
      const column = Math.round(along - set);
      for (let i = column - NEAR; i <= column + NEAR; i++) {
        const cell = line + (((i % columns) + columns) % columns);
        const [x, y] = moved[cell];
        near.x[slot] = i + set - along + x;
        near.y[slot] = ROW * (j - across + y);
        near.chance[slot] = chance[cell];
        slot++;
      }
    }
    return near;
  };
}
