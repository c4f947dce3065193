/**
 * How many rays look for the walls of a piece.
 */

/** Rays through a ring: about 0.3 mm apart on 1000 mm², each thin place then walked to its least. */
export const RAYS = 12_000;

/** Of a draft so many alike units share the rays of one ring. Chosen: its rays take a quarter of the time then. */
const SHARED_BY = 4;

/**
 * Rays of a draft. Where a ring is made of turned images of one unit a place of the unit comes again in each, and rays fall on
 * other places of each: so a quarter of them over four units lies as near together on one of them as all do on a ring of which
 * nothing comes again.
 *
 * @param units of how many turned images the piece was seen to be made, 1 where of none
 */
export function draftRays(units: number): number {
  return RAYS / Math.min(units, SHARED_BY);
}
