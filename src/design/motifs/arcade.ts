/**
 * The motif arcade: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  arches: count("arches along the tile", [2, 4, 2]),
  line: share("thickness of piers, arches and sill over the tile width", [0.06, 0.1, 0.08]),
  point: share("how pointed the arches are: 0 round, 1 equilateral", [0, 1, 0.4]),
});

export const arcadeMotif = {
  name: "arcade",
  summary: "arches on a sill, round or pointed",
  group: "p1m1",
  aspect: { natural: 1, least: 0.75, most: 2 },
  parameters,
} as const satisfies MotifFacts;
