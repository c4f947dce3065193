/**
 * The motif fret: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count } from "./parameter.js";

const parameters = z.strictObject({
  hooks: count("hooks along the tile", [1, 2, 1]),
  turns: count("how often each hook turns in: 1 three corners, 2 five", [1, 2, 2]),
});

export const fretMotif = {
  name: "fret",
  summary: "a line with square hooks that turn in",
  group: "p1",
  aspect: { natural: 1, least: 0.8, most: 1.6 },
  parameters,
} as const satisfies MotifFacts;
