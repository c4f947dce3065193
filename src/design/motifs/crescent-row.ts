/**
 * The motif crescent-row: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  crescents: count("crescents along the tile", [1, 3, 2]),
  size: share("height of the crescents over the tile's", [0.6, 0.9, 0.84]),
  thickness: share(
    "thickness of their backs over their radius (or 3/4 of the room along the band where that is less)",
    [0.4, 0.58, 0.5],
  ),
});

export const crescentRowMotif = {
  name: "crescent-row",
  summary: "crescents one behind the other",
  group: "p11m",
  aspect: { natural: 1, least: 0.8, most: 1.05 },
  parameters,
} as const satisfies MotifFacts;
