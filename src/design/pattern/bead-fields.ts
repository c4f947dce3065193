/**
 * The fields that every bead run has: how large its beads are and how they are spaced.
 */
import { z } from "zod";
import { PATTERN_DEFAULTS } from "./defaults.js";

const beadDiameter = z.number().min(0.1).max(5);

export const beadSize = {
  diameter: beadDiameter.describe("bead diameter, mm, 0.1 to 5; milgrain: 0.3 to 0.6"),
  to: beadDiameter
    .optional()
    .describe("diameter at an open line's end, half way round a closed one, mm, 0.1 to 5; default one size"),
  alternate: beadDiameter.optional().describe("diameter of every second bead, mm, 0.1 to 5; not with `to`"),
  pitch: z
    .number()
    .min(0.5)
    .max(20)
    .optional()
    .describe("spacing over diameter, 0.5 to 20; default 1.05; the nearest that comes out even"),
  count: z.int().min(1).optional().describe("beads in each run, instead of a pitch"),
  embed: z
    .number()
    .min(0.1)
    .max(0.9)
    .default(PATTERN_DEFAULTS.bead.embed)
    .describe("share of it below the surface, 0.1 to 0.9; default 0.5"),
  corners: z
    .enum(["pass", "on", "split"])
    .optional()
    .describe(
      "at corners: pass (beads take no notice), on (a bead on each), split (equal gaps beside each); default pass",
    ),
  cornerAngle: z
    .number()
    .min(5)
    .max(175)
    .optional()
    .describe("corners turn by more than this, degrees, 5 to 175; default 30"),
  junctions: z
    .enum(["leave", "share"])
    .optional()
    .describe("where it meets another that shares: leave, or share one bead; default leave"),
};
