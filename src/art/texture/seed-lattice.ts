/**
 * The points that a texture is made about: one for each cell of a lattice whose rows are set off by half a cell, moved out
 * of its middle by chance.
 *
 * The lattice comes again after the tile's width and height, whole cells each, and is its own image under every operation of
 * the tile's group. Chance is asked for once among the cells that the group carries into each other, and moved as it moves
 * them; a cell that is its own image keeps to the mirror, or to the centre of the turn. So the points are exactly as
 * symmetric as drawn art, and as far apart on a mirror as elsewhere.
 */
import type { TileOperation } from "../../base/frieze/symmetry.js";
import { seeded } from "../../base/math/seeded.js";

export interface LatticeInput {
  /** Width and height of what comes again, mm. */
  readonly width: number;
  readonly height: number;
  /** mm from one point to the next that are wished for, along and across. */
  readonly along: number;
  readonly across: number;
  /** 0 to 1. */
  readonly irregular: number;
  readonly seed: number;
  /** The group's; x = 0 and y = 0 stand as in a tile. */
  readonly operations: readonly TileOperation[];
}

export interface SeedLattice {
  /** Cells along and rows across of one period. */
  readonly columns: number;
  readonly rows: number;
  /** Of a cell along and of a row across, mm. */
  readonly pitch: readonly [along: number, across: number];
  /** By row · columns + column: how far the point lies from its cell's middle, in pitches. */
  readonly moved: readonly (readonly [along: number, across: number])[];
  /** By the same: chance, 0 to 1. */
  readonly chance: Float64Array;
}

/** Rows stand this share of a cell's width apart where cells are as far from all neighbours: √3 / 2. */
export const ROW = 0.8660254037844386;

/** Points leave the middle of their cell by up to this share of a pitch, either way. Chosen by eye; `NEAR` rests on it. */
const MOST_MOVED = 0.4;

/** What chance is asked for. */
const CHANNELS = { along: 0, across: 1, own: 2 } as const;

/** Lays out the points. */
export function seedLattice(input: LatticeInput): SeedLattice {
  const { width, height, along, across, irregular, seed, operations } = input;
  // Operations by half a tile want an even number of cells; rows set off by turns an even number of rows.
  const parts = operations.some(({ shift }) => shift !== 0) ? 2 : 1;
  const columns = parts * Math.max(1, Math.round(width / (parts * along)));
  const rows = 2 * Math.max(1, Math.round(height / (2 * ROW * across)));
  const moved = new Array<readonly [number, number]>(columns * rows);
  const chance = new Float64Array(columns * rows);
  for (let cell = 0; cell < columns * rows; cell++) {
    if (moved[cell] !== undefined) continue;
    const images = operations.map((operation) => ({ operation, at: imageOf(cell, columns, rows, operation) }));
    const own = images.filter(({ at }) => at === cell);
    const free = (flips: (operation: TileOperation) => boolean) =>
      Number(!own.some(({ operation }) => flips(operation)));
    const draw = (channel: keyof typeof CHANNELS) => seeded(seed, cell, CHANNELS[channel]);
    const most = 2 * MOST_MOVED * irregular;
    const x = free(({ flipX }) => flipX) * most * (draw("along") - 0.5);
    const y = free(({ flipY }) => flipY) * most * (draw("across") - 0.5);
    for (const { operation, at } of images) {
      moved[at] = [operation.flipX ? -x : x, operation.flipY ? -y : y];
      chance[at] = draw("own");
    }
  }
  return { columns, rows, pitch: [width / columns, height / rows], moved, chance };
}

/** The cell that an operation carries a cell to. Counted in half cells along, since rows are set off by one. */
function imageOf(cell: number, columns: number, rows: number, { flipX, flipY, shift }: TileOperation): number {
  const row = Math.floor(cell / columns);
  const half = 2 * (cell % columns) + (row % 2);
  const across = flipY ? (rows - row) % rows : row;
  const along = ((flipX ? -half : half) + 2 * columns * (1 + shift)) % (2 * columns);
  return across * columns + (along - (across % 2)) / 2;
}
