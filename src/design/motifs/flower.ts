/**
 * The motif flower: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  petals: evenCount("petals", [4, 8, 6]),
  eye: share("diameter of the eye over the flower's", [0.22, 0.34, 0.26]),
  fullness: share("width of the petals over its room", [0.7, 0.86, 0.84]),
});

export const flowerMotif = {
  name: "flower",
  summary: "petals round an eye",
  group: "p2mm",
  aspect: { natural: 1, least: 0.9, most: 2 },
  parameters,
} as const satisfies MotifFacts;
