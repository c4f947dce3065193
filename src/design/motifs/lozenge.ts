/**
 * The motif lozenge: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  width: share("width over the tile's", [0.4, 0.94, 0.9]),
  height: share("height over the tile's", [0.4, 0.92, 0.9]),
  bow: share(
    "how far the sides bulge from straight to the corner of the box round it, below 0 inwards; share of the way",
    [-0.1, 0.8, 0],
  ),
});

export const lozengeMotif = {
  name: "lozenge",
  summary: "four sides, straight or bowed",
  group: "p2mm",
  aspect: { natural: 1, least: 0.8, most: 1.3 },
  parameters,
} as const satisfies MotifFacts;
