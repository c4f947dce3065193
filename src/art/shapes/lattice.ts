/**
 * Copies in rows and columns of cells that divide the tile: straight, half-drop or brick, as textile repeats name them.
 *
 * The lattice is endless; the tile shows its part. What leaves the tile at its right goes on in the next tile, and what
 * leaves it at the top comes in again from below.
 */

import { AnnuletError } from "../../base/errors.js";
import { type Affine, compose, scaling, translation } from "../../base/math/affine.js";
import { LATTICE_DEFAULTS, type LatticeShape, type LatticeSpec } from "../../design/shapes/lattice.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { boxRing, ringBox } from "../../flat/box.js";
import { clipLinesTo, clipWithin } from "../../flat/polygons.js";
import { type DrawnPaths, unitScale } from "../read-art.js";
import { uniteCopies } from "./copies.js";
import { requireSomething } from "./rules.js";
import type { ShapeFrame, ShapeNode } from "./shape-node.js";
import { tileMiddle } from "./tile-middle.js";

export const latticeShape: ShapeNode<LatticeShape<ShapeSpec>> = {
  draw({ lattice, of }, frame) {
    requireMatch(lattice, frame);
    const drawn = frame.draw(of, ".of");
    const copies = uniteCopies(drawn, cellMaps(lattice, drawn, frame), frame);
    return requireSomething(
      frame.beneath ? copies : clipToTile(copies, frame),
      frame.place(".lattice"),
      "the copies miss the tile",
    );
  },
};

/** Half a tile's height, grid steps. */
function halfHeight({ strip }: ShapeFrame): number {
  return strip.rowStep / 2;
}

/** Copies that reach into the tile by less than this, mm, only touch it. */
const TOUCH = 1e-3;

/** A map for each cell whose copy reaches into the tile; those above and below the tile's own rows among them. */
function cellMaps(lattice: LatticeSpec, drawn: DrawnPaths, frame: ShapeFrame): Affine[] {
  const { columns, rows, set, scale } = { ...LATTICE_DEFAULTS, ...lattice };
  const { strip, unit } = frame;
  const [mx, my] = lattice.middle ?? tileMiddle(frame);
  const [unitX, unitY] = unitScale(strip, unit);
  const [width, height] = [strip.tileWidth / unitX / columns, strip.tileHeight / unitY / rows];
  const box = ringBox([...drawn.closed, ...drawn.open].flat());
  const stepsY = unitY * strip.grid.scale;
  const low = scale * (box.low / stepsY - my);
  const high = scale * (box.high / stepsY - my);
  const top = (rows * height) / 2;
  const touch = TOUCH / unitY;
  const maps: Affine[] = [];
  for (let column = 0; column < columns; column++) {
    const drop = set === "half-drop" && column % 2 !== 0 ? height / 2 : 0;
    // Rows are counted downwards from the top.
    const first = top - height / 2 - drop;
    const from = Math.ceil((first + low - top + touch) / height);
    const to = Math.floor((first + high + top - touch) / height);
    for (let row = from; row <= to; row++) {
      const along = set === "brick" && row % 2 !== 0 ? width / 2 : 0;
      const place = translation((column + 0.5) * width + along, first - row * height);
      maps.push(compose(place, scaling(scale, scale), translation(-mx, -my)));
    }
  }
  return maps;
}

/** Cuts off what stands above or below the tile. */
function clipToTile({ closed, open }: DrawnPaths, frame: ShapeFrame): DrawnPaths {
  const half = halfHeight(frame);
  const { left, right, low, high } = ringBox([...closed, ...open].flat());
  if (low >= -half && high <= half) return { closed, open };
  const room = { left: left - 1, right: right + 1, low: -half, high: half };
  // A grid step of room, so that lines on the tile's border are no matter of rounding.
  const roomier = boxRing({ ...room, low: -half - 1, high: half + 1 });
  return { closed: clipWithin(closed, room, 0), open: clipLinesTo(open, [roomier], "inside") };
}

function requireMatch({ columns, rows, set }: LatticeSpec, frame: ShapeFrame): void {
  if (set === "half-drop" && columns % 2 !== 0) {
    throw oddCells(
      "columns",
      columns,
      "half-drop columns only match the next tile's where their number is even",
      frame,
    );
  }
  if (set === "brick" && rows % 2 !== 0 && frame.strip.rows > 1) {
    throw oddCells("rows", rows, "brick rows only match those of the tile above where their number is even", frame);
  }
}

function oddCells(field: string, value: number, message: string, frame: ShapeFrame): AnnuletError {
  return new AnnuletError({
    code: "lattice-odd",
    message,
    path: frame.place(`.lattice.${field}`),
    value,
    allowed: `an even number, ${value - 1 > 0 ? `${value - 1} or ` : ""}${value + 1}`,
  });
}
