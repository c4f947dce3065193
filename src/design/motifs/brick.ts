/**
 * The motif brick: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  courses: evenCount("courses across the tile", [2, 4, 4]),
  joint: share("width of the joints over the tile width", [0.05, 0.1, 0.07]),
  soft: share("roundness of the corners over half a brick's height", [0, 0.8, 0.4]),
});

export const brickMotif = {
  name: "brick",
  summary: "bricks in courses, half a brick apart",
  group: "p2mg",
  aspect: { natural: 1, least: 0.7, most: 2 },
  parameters,
} as const satisfies MotifFacts;
