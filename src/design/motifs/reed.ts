/**
 * The motif reed: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  rods: evenCount("rods along the tile", [2, 6, 4]),
  width: share("width of the rods over its room", [0.45, 0.7, 0.62]),
  step: share("by how much of the others' length every second rod is shorter", [0, 0.5, 0.25]),
});

export const reedMotif = {
  name: "reed",
  summary: "upright rods, every second one shorter",
  group: "p2mm",
  aspect: { natural: 1, least: 0.8, most: 3 },
  parameters,
} as const satisfies MotifFacts;
