/**
 * The walls of a solid: how much metal stands between faces that face away from each other, and where it is least.
 *
 * A wall is measured along a ray that goes in straight to the surface. Faces that lean towards each other meet in an edge,
 * where that length runs out to nothing however thick the piece: they are no walls.
 */
import { numberFrom, type OptionRules, requireOptions, wholeFrom } from "../base/options.js";
import { radians } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";
import { requireSound } from "../mesh/sound.js";
import { distance, type Wall, WallRays } from "./wall-rays.js";

export type { Wall } from "./wall-rays.js";

/** How walls are looked for. */
export interface WallOptions {
  /** Rays that are sent through the solid, spread evenly over its surface; whole, 100 to 10 million. Default 30 000. */
  readonly rays?: number | undefined;
  /** Faces that lean towards each other by more than this are an edge, degrees, 0 to 89. Default 30. */
  readonly lean?: number | undefined;
  /** Thinnest places that are told, whole, 1 to 1000. Default 10. */
  readonly places?: number | undefined;
  /** Places nearer to each other than this are one, mm, 0.1 to 100. Default 1. */
  readonly apart?: number | undefined;
}

/** Defaults of the search for thin walls. The lean is chosen: petals' tips are sharper than walls ever are. */
export const WALL_DEFAULTS = { rays: 30_000, lean: 30, places: 10, apart: 1 } as const;

const RULES: OptionRules<WallOptions> = {
  rays: wholeFrom(100, 1e7),
  lean: numberFrom(0, 89, "degrees"),
  places: wholeFrom(1, 1000),
  apart: numberFrom(0.1, 100, "mm"),
};

/** What was found of walls. */
export interface WallCheck {
  /** The thinnest walls, each the least nearby, thinnest first; empty where no two faces make a wall. */
  readonly thinnest: readonly Wall[];
  /** Rays that met a wall; the rest came out at an edge. */
  readonly walls: number;
}

/**
 * Looks for the thinnest walls of a closed mesh: rays spread over its surface, then from the thinnest places on in small
 * steps to the least thickness nearby. Thin places smaller than the rays are apart (the square root of the area over their
 * number) can be missed.
 *
 * @throws AnnuletError `mesh-malformed`; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const [{ thickness }] = checkWalls(mesh, { rays: 5000 }).thinnest; // mm
 */
export function checkWalls(mesh: Mesh, options: WallOptions = {}): WallCheck {
  requireOptions(options, RULES);
  const { rays = WALL_DEFAULTS.rays, lean = WALL_DEFAULTS.lean, places = WALL_DEFAULTS.places } = options;
  const { apart = WALL_DEFAULTS.apart } = options;
  requireSound(mesh);
  if (mesh.triangles.length === 0) return { thinnest: [], walls: 0 };
  const through = new WallRays(mesh, radians(lean));
  const walls = through.sample(rays);
  return { thinnest: thinnestApart(walls, { through, places, apart }), walls: walls.length };
}

export interface ThinnestOptions {
  readonly through: WallRays;
  readonly places: number;
  /** mm */
  readonly apart: number;
  /** Which walls count; asked of the thinnest first. Default all do. */
  readonly counts?: (wall: Wall) => boolean;
}

/** The thinnest of many walls, each the least within `apart` of where it was met, thinnest first. */
export function thinnestApart(walls: readonly Wall[], { through, places, apart, counts }: ThinnestOptions): Wall[] {
  const found: Wall[] = [];
  const met: Wall[] = [];
  const near = (a: Wall, b: Wall) => distance(a.from, b.from) < apart || distance(a.from, b.to) < apart;
  for (const wall of [...walls].sort((a, b) => a.thickness - b.thickness)) {
    if (found.length >= places) break;
    if (counts !== undefined && !counts(wall)) continue;
    if (met.some((other) => near(wall, other)) || found.some((other) => near(wall, other))) continue;
    met.push(wall);
    const settled = through.settle(wall, apart, counts);
    if (!found.some((other) => near(settled, other))) found.push(settled);
  }
  return found.sort((a, b) => a.thickness - b.thickness);
}
