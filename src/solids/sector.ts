/**
 * The part of a body that lies over a sector of the round, ended by faces that were flat before it was bent. It is cut
 * once its points are bent: a bent triangle is cut as it is, so that up to its ends the part is the body's own surface.
 *
 * Cut while flat it would gain points off the chords of its bent triangles, and the two ends of a unit would no longer
 * meet.
 */

import type { BandSurface } from "../band/surface/surface.js";
import type { HalfSpace } from "../base/math/half-space.js";
import { isWholeRound, type Sector } from "../base/math/round.js";
import { BREATH, type Pausing } from "../base/pausing.js";
import { capMesh } from "../mesh/cap.js";
import { clipMesh } from "../mesh/clip.js";
import type { Mesh } from "../mesh/mesh.js";
import { type Tile, tilesOver } from "./tile.js";

/** How far bodies go on beyond a sector, mm, so that their ends do not matter. */
export const BEYOND = 0.1;

/** Points this near to the plane of a cut are put on it, mm. */
const ON_CUT = 1e-6;

/** A sector as u of its ends and the least v, mm, with what is left beyond them. */
export interface FlatSector {
  /** Infinite where it is the whole round, as the other one. */
  readonly low: number;
  readonly high: number;
  readonly least: number;
}

/** The sector on the flat seat. */
export function flatSector(sector: Sector, wrap: BandSurface): FlatSector {
  const { from, to, upper = false } = sector;
  const round = isWholeRound(sector);
  return {
    low: round ? Number.NEGATIVE_INFINITY : wrap.uAt(from) - BEYOND,
    high: round ? Number.POSITIVE_INFINITY : wrap.uAt(to) + BEYOND,
    least: upper ? -BEYOND : Number.NEGATIVE_INFINITY,
  };
}

/**
 * What of a body of tiles, bent, lies over the sector: empty where nothing does. In the whole round the tile stands once, as
 * bodies that end by themselves do.
 */
export function* cutSector(
  tile: Tile,
  { low, high, least }: FlatSector,
  bend: (flat: Mesh) => Pausing<Mesh>,
): Pausing<Mesh> {
  const cuts: HalfSpace[] = [];
  const round = !Number.isFinite(low);
  if (!round) cuts.push({ normal: [-1, 0, 0], offset: -low }, { normal: [1, 0, 0], offset: high });
  if (Number.isFinite(least)) cuts.push({ normal: [0, -1, 0], offset: -least });
  const tiles = round ? tile.mesh : tilesOver(tile, low, high);
  let part = { flat: tiles, bent: yield* bend(tiles) };
  for (const keep of cuts) {
    yield BREATH;
    const { mesh, marks, carried } = clipMesh(part.flat, keep, { reach: ON_CUT, carried: part.bent.positions });
    const flat = capMesh(mesh, keep, (vertex) => marks[vertex] === 1);
    part = { flat, bent: { positions: carried as Float64Array, triangles: flat.triangles } };
  }
  return part.bent;
}

/** What of a mesh lies in a half space, closed at its plane. */
export function cutOff(mesh: Mesh, keep: HalfSpace): Mesh {
  const { mesh: open, marks } = clipMesh(mesh, keep, { reach: ON_CUT });
  return capMesh(open, keep, (vertex) => marks[vertex] === 1);
}
