/**
 * Copies of a shape under maps of the drawing, in which circles are round: the tile itself may be stretched.
 *
 * Maps are made in the drawing's coordinates and brought into the tile by its scale. Corners of copies that differ by
 * rounding are snapped together (`snap.ts`).
 */
import { AnnuletError } from "../../base/errors.js";
import { type Affine, compose, determinant, IDENTITY, mapPoint, scaling } from "../../base/math/affine.js";
import type { GridPath } from "../../flat/grid.js";
import { unite } from "../../flat/polygons.js";
import { type DrawnPaths, unitScale } from "../read-art.js";
import type { ShapeFrame } from "./shape-node.js";
import { snapTogether } from "./snap.js";

/** Farthest that a copy may reach from the tile's corner, mm: above any band, below what would lose grid steps. Chosen. */
const FARTHEST = 1_000;

/**
 * The shape under each map, united.
 *
 * @param maps in the drawing's coordinates and unit
 * @throws AnnuletError `shape-too-far`, `shape-too-complex`
 */
export function uniteCopies(drawn: DrawnPaths, maps: readonly Affine[], frame: ShapeFrame): DrawnPaths {
  const { budget, where } = frame;
  budget.allow([...drawn.closed, ...drawn.open], maps.length, where);
  const copies = maps.map((map) => mapDrawn(drawn, map, frame));
  const rings = snapTogether(copies.map(({ closed }) => closed));
  const open = copies.flatMap((copy) => copy.open);
  budget.spendUnion(rings, where);
  budget.spend(open, where);
  return { closed: unite(rings), open };
}

function mapDrawn(drawn: DrawnPaths, map: Affine, frame: ShapeFrame): DrawnPaths {
  if (map === IDENTITY) return drawn;
  const { scale } = frame.strip.grid;
  const [sx, sy] = unitScale(frame.strip, frame.unit);
  const onGrid = compose(scaling(sx * scale, sy * scale), map, scaling(1 / (sx * scale), 1 / (sy * scale)));
  const turnsOver = determinant(map) < 0;
  const move = (path: GridPath) => mapPath(path, onGrid, FARTHEST * scale, frame.where);
  const ring = (path: GridPath) => (turnsOver ? move(path).reverse() : move(path));
  return { closed: drawn.closed.map(ring), open: drawn.open.map(move) };
}

function mapPath(path: GridPath, map: Affine, farthest: number, where: string): GridPath {
  return path.map(({ x, y }) => {
    const [u, v] = mapPoint(map, [x, y]);
    if (Math.abs(u) <= farthest && Math.abs(v) <= farthest) return { x: Math.round(u), y: Math.round(v) };
    throw new AnnuletError({
      code: "shape-too-far",
      message: `a copy reaches more than ${FARTHEST} mm from the tile`,
      path: where,
      allowed: `within ${FARTHEST} mm`,
      hint: "check its centre, its lines and their unit",
    });
  });
}
