/**
 * The motif basket: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  bars: count("bars in a block", [2, 3, 3]),
  width: share("width of the bars over its room", [0.45, 0.62, 0.56]),
});

export const basketMotif = {
  name: "basket",
  summary: "blocks of level and upright bars by turns",
  group: "p2mg",
  aspect: { natural: 1, least: 0.9, most: 1.3 },
  parameters,
} as const satisfies MotifFacts;
