/**
 * The motif star: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  points: evenCount("points", [4, 8, 8]),
  waist: share("distance of the inner corners from the middle over the points'", [0.45, 0.75, 0.58]),
  soft: share("roundness of all corners over half a side", [0, 0.5, 0.12]),
});

export const starMotif = {
  name: "star",
  summary: "a star of 4, 6 or 8 points",
  group: "p2mm",
  aspect: { natural: 1, least: 0.8, most: 2 },
  parameters,
} as const satisfies MotifFacts;
