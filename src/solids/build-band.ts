/**
 * The band, or the part of it over a sector.
 */
import type { HalfSpace } from "../base/math/half-space.js";
import { isWholeRound, type Sector } from "../base/math/round.js";
import { TURN } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";
import { BEYOND, cutOff } from "./sector.js";
import { type PolylineAt, type SweepOptions, sweepBand, sweepPart } from "./sweep.js";

export interface BandOptions extends SweepOptions {
  /** Default the whole round. */
  readonly sector?: Sector | undefined;
}

/** The band is cut off farther below the middle than what it carries, so that no cut lies in a cut. */
const LOWER: HalfSpace = { normal: [0, 0, -1], offset: 1.5 * BEYOND };

/** Facets left beyond either end of a sector, as a share of one, at least. */
const SPARE = 0.3;

export function buildBand(polylineAt: PolylineAt, { facets, startAngle, sector }: BandOptions): Mesh {
  if (sector === undefined || isWholeRound(sector)) {
    const band = sweepBand(polylineAt, { facets, startAngle });
    return sector?.upper === true ? cutOff(band, LOWER) : band;
  }
  const line = (angle: number) => ((angle - startAngle) * facets) / TURN;
  const first = Math.floor(line(sector.from) - SPARE);
  const count = Math.ceil(line(sector.to) + SPARE) - first;
  const part = sweepPart(polylineAt, { facets, startAngle }, { first, count });
  return sector.upper === true ? cutOff(part, LOWER) : part;
}
