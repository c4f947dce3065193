/**
 * The motif braid: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  strands: count("strands", [2, 3, 3]),
  swing: share("height of the strands' middle lines over the tile's", [0.6, 0.7, 0.68]),
});

export const braidMotif = {
  name: "braid",
  summary: "waves that cross each other",
  group: "p2mg",
  woven: "p2 with two strands, p11g with three",
  aspect: { natural: 0.7, least: 0.6, most: 1 },
  ribbon: { share: 0.12, join: "round", ends: "butt" },
  parameters,
} as const satisfies MotifFacts;
