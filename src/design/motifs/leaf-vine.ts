/**
 * The motif leaf-vine: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { angle, share } from "./parameter.js";

const parameters = z.strictObject({
  swing: share("height of the stem's middle line over the tile's", [0.4, 0.5, 0.48]),
  stem: share("width of the stem over the tile's", [0.06, 0.09, 0.075]),
  lean: angle("angle of the leaves to the band", [80, 90, 82]),
});

export const leafVineMotif = {
  name: "leaf-vine",
  summary: "a winding stem with a leaf in each bend",
  group: "p11g",
  aspect: { natural: 0.9, least: 0.8, most: 0.95 },
  parameters,
} as const satisfies MotifFacts;
