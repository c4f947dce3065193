/**
 * The motif leaf-pair: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { angle, count, share } from "./parameter.js";

const parameters = z.strictObject({
  pairs: count("pairs of leaves along the tile", [1, 3, 3]),
  lean: angle("angle of the leaves to the stem", [48, 65, 52]),
  fullness: share("width of the leaves over its room", [0.7, 1, 0.9]),
});

export const leafPairMotif = {
  name: "leaf-pair",
  summary: "leaves in pairs on a straight stem",
  group: "p11m",
  aspect: { natural: 1, least: 0.8, most: 1.3 },
  parameters,
} as const satisfies MotifFacts;
