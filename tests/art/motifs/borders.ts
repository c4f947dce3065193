/** How a region goes on over the border between two tiles. */
import type { GridPoint } from "../../../src/flat/grid.js";
import type { Completed } from "./motifs.js";

/** Largest deviation of the outlines that are looked at, mm, and how far from the border that is done. */
export const FINE = 1e-3;
const BESIDE = 5e-3;

/** Chords of such outlines turn by less, radians; a vertex nearer to the border than this lies on it, mm. */
export const SMOOTH = 0.25;
const ON_BORDER = 1e-5;

export interface Crossing {
  /** Step across the border between the outline's course on both sides of it, mm. */
  readonly step: number;
  /** Change of direction there, or of it from the mirror image, whichever is less, radians. */
  readonly kink: number;
}

/**
 * The crossings of the outline with the border at x = 0, from below; undefined where a corner so near to the border hides
 * them. Throws where both sides have different numbers.
 */
export function bordersOf(completed: Completed): Crossing[] | undefined {
  const { scale } = completed.strip.grid;
  const at = (mm: number) => crossings(completed, mm * scale).map((y) => y / scale);
  const [far, left, right, beyond] = [-2 * BESIDE, -BESIDE, BESIDE, 2 * BESIDE].map(at);
  if (left.length !== right.length) throw new Error(`beside the border: ${left.length} outlines, ${right.length}`);
  if (cornerBeside(completed)) return undefined;
  return left.map((y, i) => {
    const [before, after] = [(y - far[i]) / BESIDE, (beyond[i] - right[i]) / BESIDE];
    const [inwards, outwards] = [Math.atan(before), Math.atan(after)];
    return {
      step: Math.abs(y + before * BESIDE - (right[i] - after * BESIDE)),
      kink: Math.min(Math.abs(inwards - outwards), Math.abs(inwards + outwards)),
    };
  });
}

/** y at which the outline crosses the upright line at x, lowest first. */
function crossings({ region }: Completed, x: number): number[] {
  const line = Math.round(x) + 0.5; // between grid steps, so that no vertex lies on it
  const found: number[] = [];
  for (const ring of region) {
    ring.forEach((b, i) => {
      const a = ring.at(i - 1) as GridPoint;
      if (a.x < line !== b.x < line) found.push(a.y + ((line - a.x) / (b.x - a.x)) * (b.y - a.y));
    });
  }
  return found.sort((a, b) => a - b);
}

function cornerBeside({ strip, region }: Completed): boolean {
  return region.some((ring) =>
    ring.some((b, i) => {
      const away = Math.abs(b.x) / strip.grid.scale;
      if (away > 2 * BESIDE || away < ON_BORDER) return false;
      const [a, c] = [ring.at(i - 1) as GridPoint, ring[(i + 1) % ring.length]];
      const turn = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
      return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) > SMOOTH / 2 || (b.x - a.x) * (c.x - b.x) <= 0;
    }),
  );
}
