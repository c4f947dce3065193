/**
 * The motif chain: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  line: share("thickness of the links over the tile width", [0.07, 0.12, 0.1]),
  length: share("length of the links seen from the front over the tile width", [0.66, 0.78, 0.72]),
  height: share("height of those links over the tile's", [0.65, 0.88, 0.84]),
});

export const chainMotif = {
  name: "chain",
  summary: "links seen from front and side by turns",
  group: "p2mm",
  aspect: { natural: 0.6, least: 0.55, most: 0.9 },
  parameters,
} as const satisfies MotifFacts;
