/**
 * The motif rope-twist: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  strands: count("strands along the tile", [2, 3, 3]),
  slant: share("how far strands run along the band over the tile width", [0.25, 0.5, 0.4]),
  gap: share("gap between the strands along the band over its room", [0.3, 0.42, 0.32]),
});

export const ropeTwistMotif = {
  name: "rope-twist",
  summary: "strands aslant, as of a twisted rope",
  group: "p2",
  aspect: { natural: 0.7, least: 0.6, most: 1.2 },
  parameters,
} as const satisfies MotifFacts;
