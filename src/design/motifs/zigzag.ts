/**
 * The motif zigzag: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  bars: count("bars across the tile", [1, 3, 2]),
  rise: share("height of each zigzag's middle line over the tile's", [0.15, 0.4, 0.3]),
  weight: share("height of a bar over its room", [0.46, 0.6, 0.54]),
});

export const zigzagMotif = {
  name: "zigzag",
  summary: "bars that go up and down",
  group: "p2mg",
  aspect: { natural: 1, least: 0.9, most: 1.4 },
  parameters,
} as const satisfies MotifFacts;
