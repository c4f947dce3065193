/**
 * What is measured on the solid: the metal over the bore, other walls, inner corners.
 *
 * Raised detail and beads are not walls: rays that pass through them alone are left out, since lines and beads have limits
 * of their own.
 */
import { findSharpCorners } from "../checks/sharp-corners.js";
import { type Wall, WallRays } from "../checks/wall-rays.js";
import { thinnestApart, WALL_DEFAULTS } from "../checks/walls.js";
import type { Point3 } from "../math/point.js";
import { PointGrid } from "../math/point-grid.js";
import { radians } from "../units.js";
import type { JudgedPiece, Measured } from "./piece.js";

/** Rays through a ring: about 0.2 mm apart on a large one. */
const RAYS = 20_000;

/** Inner edges that turn by more are sharp, degrees: a fillet of 0.125 mm in chords of the tolerance turns by less. */
const SHARP = 60;

/** A ray this near to straight out from the axis, by its cosine, measures the metal over the bore. */
const STRAIGHT_OUT = 0.8;

/** What is less than this below a surface stands on it, mm: facets lie that deep, and relief has its foot there. */
const ABOVE = 0.02;

export interface SolidMeasures {
  readonly shank: Measured | undefined;
  readonly wall: Measured | undefined;
  readonly corner: Measured | undefined;
}

export function measureSolid(piece: JudgedPiece): SolidMeasures {
  const through = new WallRays(piece.mesh, radians(WALL_DEFAULTS.lean));
  const rays = through.sample(RAYS);
  const detail = isDetail(piece);
  const { places, apart } = WALL_DEFAULTS;
  const thinnest = (kind: (wall: Wall) => boolean) => {
    const counts = (wall: Wall) => kind(wall) && !detail(wall);
    return measured(thinnestApart(rays, { through, places, apart, counts }));
  };
  const over = isOverBore(piece);
  const shank = thinnest(over);
  const other = thinnest((wall) => !over(wall));
  const wall = shank === undefined || (other !== undefined && other.figure < shank.figure) ? other : shank;
  return { shank, wall, corner: cornersOf(piece) };
}

function measured(walls: readonly Wall[]): Measured | undefined {
  if (walls.length === 0) return undefined;
  const places = walls.map(({ from, to }) => ({
    space: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2] as const,
  }));
  return { figure: walls[0].thickness, places };
}

/** Whether a wall lies between the bore and what is straight above it. */
function isOverBore({ profile, wrap }: JudgedPiece): (wall: Wall) => boolean {
  const middle = (profile.boreRadius + wrap.section(0, 0)[1]) / 2;
  return ({ from, to, thickness }) => {
    const [x, y] = [(to[0] - from[0]) / thickness, (to[1] - from[1]) / thickness];
    const radius = Math.hypot(from[0], from[1]);
    const out = Math.abs(x * from[0] + y * from[1]) / radius;
    return out >= STRAIGHT_OUT && Math.min(radius, Math.hypot(to[0], to[1])) < middle;
  };
}

/** Whether a ray passes through nothing but relief or letters, or begins or ends on a bead: that only adds metal. */
function isDetail({ profile, wrap, beads, tolerance }: JudgedPiece): (wall: Wall) => boolean {
  const half = wrap.seatLength / 2 + ABOVE;
  const onSeat = (point: Point3) => {
    const [, v, h] = wrap.inverse(...point);
    return h > -ABOVE && Math.abs(v) <= half;
  };
  const radius = ([x, y]: Point3) => Math.hypot(x, y);
  const onRail = (point: Point3) => profile.rails !== undefined && radius(point) > profile.rails.top - ABOVE;
  const inBore = (point: Point3) => radius(point) < profile.boreRadius + ABOVE;
  const largest = beads.reduce((most, bead) => Math.max(most, bead.radius), 0);
  const grid = new PointGrid<number>(Math.max(largest + ABOVE, ABOVE));
  beads.forEach(({ centre }, i) => {
    grid.add(centre, i);
  });
  const reach = Math.max(ABOVE, 2 * tolerance);
  const onBead = (point: Point3, i: number) => {
    const { centre, radius: size } = beads[i];
    return Math.abs(Math.hypot(point[0] - centre[0], point[1] - centre[1], point[2] - centre[2]) - size) <= reach;
  };
  const isBead = (point: Point3) => grid.near(point).some((i) => onBead(point, i));
  return ({ from, to }) => {
    return [onSeat, onRail, inBore].some((stands) => stands(from) && stands(to)) || isBead(from) || isBead(to);
  };
}

function cornersOf({ mesh }: JudgedPiece): Measured | undefined {
  const { length, sharpest } = findSharpCorners(mesh, radians(SHARP));
  if (sharpest === undefined) return undefined;
  const more = `${length.toFixed(0)} mm of them in all, the feet of relief and beads among them`;
  return { figure: 0, places: [{ space: sharpest }], more };
}
