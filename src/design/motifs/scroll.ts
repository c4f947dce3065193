/**
 * The motif scroll: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  halves: count("half turns that each end rolls up", [2, 3, 3]),
  length: share("length of each scroll's middle line over the tile width", [0.78, 0.84, 0.84]),
});

export const scrollMotif = {
  name: "scroll",
  summary: "S-shaped lines that roll up at both ends",
  group: "p2",
  aspect: { natural: 0.6, least: 0.56, most: 1.2 },
  ribbon: { share: 0.07, join: "round", ends: "round" },
  parameters,
} as const satisfies MotifFacts;
