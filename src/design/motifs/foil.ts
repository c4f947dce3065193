/**
 * The motif foil: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  foils: evenCount("lobes", [4, 8, 4]),
  line: share("width of the outline over the lobes' radius", [0.42, 0.52, 0.45]),
  boss: share("diameter of the boss over the room in the middle", [0.4, 0.9, 0.7]),
});

export const foilMotif = {
  name: "foil",
  summary: "a lobed outline round a boss",
  group: "p2mm",
  aspect: { natural: 1, least: 0.9, most: 2 },
  parameters,
} as const satisfies MotifFacts;
