/**
 * The motif wave-crest: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  waves: count("waves along the tile", [1, 2, 1]),
  rise: share("height of the crests over the tile's", [0.8, 0.9, 0.9]),
  depth: share("height of the water in the troughs over the crests'", [0.16, 0.3, 0.2]),
});

export const waveCrestMotif = {
  name: "wave-crest",
  summary: "waves that break along the band",
  group: "p1",
  aspect: { natural: 0.8, least: 0.6, most: 1.1 },
  parameters,
} as const satisfies MotifFacts;
