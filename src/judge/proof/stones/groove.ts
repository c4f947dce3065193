/**
 * The section of a channel's groove, of its raised walls and of a bright cut, in closed form.
 */
import type { StoneView } from "./stone-view.js";
import { BROKEN, bulgeOf, ROOM } from "./told.js";

export interface GrooveAsked {
  readonly cover: number;
  /** Radians. */
  readonly bearing: number;
  readonly notched: boolean;
}

/** A section as a question, grown by so many mm or shrunk. */
export type SectionHolds = (y: number, z: number, grown: number) => boolean;

export interface Groove {
  readonly half: number;
  /** Height of its ledges at most. */
  readonly ledge: number;
  readonly holds: SectionHolds;
}

export function grooveOf(stone: StoneView, along: number, { cover, bearing, notched }: GrooveAsked): Groove {
  const { half: wide, keel, table } = stone.across(along);
  const [half, notch] = [wide * (1 - 2 * cover), wide + ROOM];
  const [down, up] = [stone.pavilion / (wide - keel), stone.crown / (wide - table)];
  const lower = -stone.band - ROOM * (Math.hypot(1, down) - down);
  const upper = ROOM * (Math.hypot(1, up) - up);
  const rises = Math.max(up, Math.tan(bearing - Math.atan(down)));
  const ledge = lower - (notch - half) * down;
  // Facets bulge beyond the cones: by how much is not told.
  const open = bulgeOf(stone.placed.stone);
  return {
    half,
    ledge,
    holds: (y, z, grown) => {
      const more = grown > 0 ? open + grown : grown;
      const beside = Math.abs(y);
      if (beside <= half + grown) return z >= ledge - more;
      if (!notched || beside > notch + grown) return false;
      return z >= lower - (notch - beside) * down - more && z <= upper + (notch - beside) * rises + more;
    },
  };
}

/** Both raised walls with what lies between them. */
export function wallHolds(
  half: number,
  {
    wall,
    top,
    foot,
    sure,
  }: { readonly wall: number; readonly top: number; readonly foot: number; readonly sure: number },
): SectionHolds {
  const broken = Math.min(BROKEN, wall / 3);
  return (y, z, grown) => {
    if (z < (grown < 0 ? sure : foot) || z > top + grown) return false;
    return Math.abs(y) <= half + wall - Math.max(0, z - top + broken) + grown;
  };
}

/** A floor so wide on either side at the girdle, and a slope beside it up to the surface. */
export function brightHolds(floor: number, border: number, surface: number): SectionHolds {
  return (y, z, grown) => z >= -grown && Math.abs(y) <= floor + border * Math.min(1, Math.max(0, z / surface)) + grown;
}
