/**
 * What is measured on the solid: the metal over the bore, other walls.
 *
 * Raised detail and beads are not walls: rays that pass through them alone are left out, since lines and beads have limits
 * of their own.
 */

import type { BandSurface } from "../../band/surface/surface.js";
import type { Point3 } from "../../base/math/point.js";
import { radians } from "../../base/units.js";
import { type Wall, WallRays } from "../wall-rays.js";
import { thinnestApart, WALL_DEFAULTS } from "../walls.js";
import { marksOf } from "./mark-regions.js";
import type { SolidRays } from "./measure-stone-walls.js";
import { ABOVE, type On, onBeads } from "./on-beads.js";
import type { JudgedPiece, Measured } from "./piece.js";

/** A ray this near to straight out from the axis, by its cosine, measures the metal over the bore. */
const STRAIGHT_OUT = 0.8;

export interface SolidMeasures {
  readonly shank: Measured | undefined;
  readonly wall: Measured | undefined;
}

/** Rays through the whole piece. */
export function solidRays({ mesh, rays }: JudgedPiece): SolidRays {
  const through = new WallRays(mesh, radians(WALL_DEFAULTS.lean));
  return { through, rays: through.sample(rays) };
}

export function measureSolid(piece: JudgedPiece, { through, rays }: SolidRays): SolidMeasures {
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
  return { shank, wall };
}

function measured(walls: readonly Wall[]): Measured | undefined {
  if (walls.length === 0) return undefined;
  const places = walls.map(({ from, to }) => ({
    space: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2] as const,
  }));
  return { figure: walls[0].thickness, places };
}

/** Whether a wall lies between the bore, or the floor of what is cut into it, and what is straight above it. */
function isOverBore({ profile, wrap, marks }: JudgedPiece): (wall: Wall) => boolean {
  const floors = marksOf(marks).flatMap(({ surface, body }) =>
    surface.name === "bore" && body.mode === "sunk" ? [{ map: surface.wrap, depth: body.height }] : [],
  );
  const onFloor = (point: Point3) =>
    floors.some(({ map, depth }) => Math.abs(map.inverse(...point)[2] + depth) < ABOVE);
  return ({ from, to, thickness }) => {
    const [x, y] = [(to[0] - from[0]) / thickness, (to[1] - from[1]) / thickness];
    const radius = Math.hypot(from[0], from[1]);
    const out = Math.abs(x * from[0] + y * from[1]) / radius;
    const [, seat] = wrap.lineAt(Math.atan2(from[1], from[0])).point(0, 0);
    const middle = (profile.boreRadius + seat) / 2;
    const nearBore = Math.min(radius, Math.hypot(to[0], to[1])) < middle;
    return out >= STRAIGHT_OUT && (nearBore || onFloor(from) || onFloor(to));
  };
}

/** Whether a ray passes through nothing but relief or letters, or begins or ends on a bead: that only adds metal. */
function isDetail(piece: JudgedPiece): (wall: Wall) => boolean {
  const standing = standingOn(piece);
  const isBead = onBeads(piece);
  return ({ from, to }) => standing.some((on) => on(from) && on(to)) || isBead(from) || isBead(to);
}

/**
 * Whether a point stands on a surface: the seat, the rails' tops, the bore, each where marks are sunk into it also beside
 * them, down to their floor.
 */
function standingOn({ profile, wrap, marks }: JudgedPiece): On[] {
  const above = (map: BandSurface, depth: number): On => {
    return (point) => {
      const [u, v, h] = map.inverse(...point);
      return h > -ABOVE - depth && Math.abs(v) <= map.lineAt(map.angleAt(u)).reach + ABOVE;
    };
  };
  const radius = ([x, y]: Point3) => Math.hypot(x, y);
  return [
    above(wrap, 0),
    (point) => profile.rails !== undefined && radius(point) > profile.rails.top - ABOVE,
    (point) => radius(point) < profile.boreRadius + ABOVE,
    ...marksOf(marks).map(({ surface, body }) => above(surface.wrap, body.mode === "sunk" ? body.height : 0)),
  ];
}
