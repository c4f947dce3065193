/**
 * Parts of settings as they are handed on: bodies in space, all of them or those that reach into a sector.
 */
import { isWholeRound, type Sector } from "../../base/math/round.js";
import { TURN } from "../../base/units.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { SettingBodies } from "./setting-bodies.js";

/** Bodies of one kind that are made together. */
export interface SettingPart {
  readonly kind: keyof SettingBodies;
  readonly bodies: (sector?: Sector) => readonly Mesh[];
}

/** A body that stands at one place of the round, whole in every sector that it reaches into. */
export function placedPart(kind: SettingPart["kind"], mesh: Mesh): SettingPart {
  let arc: Arc | undefined;
  return {
    kind,
    bodies: (sector) => {
      if (sector === undefined) return [mesh];
      arc ??= arcOf(mesh);
      return reaches(arc, sector) ? [mesh] : [];
    },
  };
}

/** From an angle on, radians, and the least and greatest z. */
interface Arc {
  readonly from: number;
  readonly wide: number;
  readonly highest: number;
}

/** Bodies this near to a sector reach into it, radians: rounding (chosen). */
const NEAR = 1e-6;

function arcOf({ positions: p }: Mesh): Arc {
  const middle = Math.atan2(p[1], p[0]);
  let [low, high, highest] = [0, 0, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < p.length; i += 3) {
    const angle = Math.atan2(p[i + 1], p[i]) - middle;
    const off = angle - TURN * Math.round(angle / TURN);
    low = Math.min(low, off);
    high = Math.max(high, off);
    highest = Math.max(highest, p[i + 2]);
  }
  return { from: middle + low - NEAR, wide: high - low + 2 * NEAR, highest };
}

function reaches({ from, wide, highest }: Arc, sector: Sector): boolean {
  if (sector.upper === true && highest < -NEAR) return false;
  if (isWholeRound(sector)) return true;
  const start = sector.from - wide - from;
  return from + TURN * Math.ceil(start / TURN) <= sector.to;
}
