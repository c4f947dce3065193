/**
 * The motif scale: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  gap: share("gap between the scales over the tile width", [0.09, 0.14, 0.1]),
});

export const scaleMotif = {
  name: "scale",
  summary: "round scales over each other, in half drop",
  group: "p1m1",
  aspect: { natural: 1, least: 0.95, most: 1.05 },
  parameters,
} as const satisfies MotifFacts;
