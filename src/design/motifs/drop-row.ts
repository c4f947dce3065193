/**
 * The motif drop-row: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  length: share("length of the drops over the tile's height", [0.7, 0.9, 0.86]),
  fullness: share("width of the drops over its room", [0.6, 0.86, 0.8]),
});

export const dropRowMotif = {
  name: "drop-row",
  summary: "drops that hang and stand by turns",
  group: "p2mg",
  aspect: { natural: 0.9, least: 0.7, most: 1.5 },
  parameters,
} as const satisfies MotifFacts;
