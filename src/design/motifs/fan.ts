/**
 * The motif fan: what it is called and what may be changed.
 */
import { z } from "zod";
import type { MotifFacts } from "./facts.js";
import { angle, count, share } from "./parameter.js";

const parameters = z.strictObject({
  ribs: count("ribs", [3, 5, 5]),
  spread: angle("angle between the outer ribs", [110, 150, 126]),
  fullness: share("width of the ribs over its room", [0.72, 0.82, 0.78]),
});

export const fanMotif = {
  name: "fan",
  summary: "ribs that spread from a boss, as on a shell",
  group: "p1m1",
  aspect: { natural: 0.66, least: 0.6, most: 1.2 },
  parameters,
} as const satisfies MotifFacts;
