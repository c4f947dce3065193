/**
 * The motif lozenge-net: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  meshes: count("lozenges along the tile", [1, 2, 1]),
  bar: share("width of the bars over the tile width", [0.085, 0.14, 0.1]),
  soft: share("roundness of the openings' corners over half a side", [0, 0.8, 0.3]),
});

export const lozengeNetMotif = {
  name: "lozenge-net",
  summary: "bars that cross aslant",
  group: "p2mm",
  aspect: { natural: 1, least: 0.7, most: 1.3 },
  parameters,
} as const satisfies MotifFacts;
