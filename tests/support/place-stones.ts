/** Stones placed on a ring, as the stage places them, with what was said. */
import type { Band } from "../../src/band/band.js";
import type { Warning } from "../../src/base/errors.js";
import { openInside } from "../../src/ring/open-ring.js";
import type { PlacedStones } from "../../src/stones/place-stones.js";

/** A plain band of 2.2 mm, flat outside: its seat is a cylinder of 10.85 mm. */
export const flatBand = {
  annulet: 1,
  size: { diameter: 17.3 },
  profile: { width: 5, thickness: 2.2, outside: { form: "flat" } },
} as const;

/** Radius of its seat, mm. */
export const FLAT_RADIUS = 10.85;

/** Ten square tiles round it, without any art. */
export const tiles = (symmetry: string, more: object = {}) => ({
  pattern: { symmetry, fit: { repeats: 10, hold: "band" }, ...more },
});

export interface Placed extends PlacedStones {
  readonly warnings: readonly Warning[];
  readonly band: Band;
}

/** Places groups on the flat band, changed by `more`. */
export async function placeOn(stones: readonly object[], more: object = {}): Promise<Placed> {
  const ring = openInside({ ...flatBand, ...more, stones });
  const { answers, warnings } = await ring.ask(["stones", "profile"], {});
  return { ...answers.stones, warnings, band: answers.profile };
}
