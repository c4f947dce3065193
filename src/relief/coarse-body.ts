/**
 * Bodies that are coarser than the art they are made of: for looking at a design while it changes.
 *
 * Art, bead lines and the places of beads stay those of a full build.
 */
import { AnnuletError } from "../base/errors.js";
import { BREATH, type Pausing } from "../base/pausing.js";
import { keepsParts } from "../flat/keeps-parts.js";
import { type GridRegion, simplify } from "../flat/polygons.js";
import { bodyStrip, type Strip, steps } from "../flat/strip.js";

/**
 * Share of the bodies' tolerance by which an outline may be straightened; its rounded edges take as much again, and a
 * vertex may go whose neighbours went before it (chosen).
 */
const STRAIGHTEN_SHARE = 0.5;

/**
 * Makes a body of a region, as coarse as the strip's bodies may be. Where a coarse one cannot be made, or would lose a part
 * or a hole, it is as fine as the art: what may not be made of the art is refused there.
 *
 * @throws AnnuletError as `make` for the region itself
 */
export function* coarseBody<Body>(
  strip: Strip,
  region: GridRegion,
  make: (strip: Strip, region: GridRegion) => Pausing<Body>,
): Pausing<Body> {
  if (strip.bodyTolerance <= strip.artTolerance) return yield* make(strip, region);
  const reach = steps(strip, STRAIGHTEN_SHARE * strip.bodyTolerance);
  const straight = simplify(region, reach).filter((ring) => ring.length > 2);
  if (!keepsParts(region, straight)) return yield* make(strip, region);
  yield BREATH;
  try {
    return yield* make(bodyStrip(strip), straight);
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    return yield* make(strip, region);
  }
}
