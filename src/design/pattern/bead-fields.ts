/**
 * The fields that every bead run has: how large its beads are and how they are spaced.
 */
import { z } from "zod";
import { PATTERN_DEFAULTS } from "./defaults.js";

const beadDiameter = z.number().min(0.1).max(5);

export const beadSize = {
  diameter: beadDiameter.describe("bead diameter, mm, 0.1 to 5; milgrain is usually 0.3 to 0.6"),
  to: beadDiameter
    .optional()
    .describe(
      "diameter that the run grows or shrinks to, mm, 0.1 to 5: at an open line's end, half way round one that closes; default one size",
    ),
  alternate: beadDiameter
    .optional()
    .describe("diameter of every second bead, mm, 0.1 to 5; not together with `to`; default one size"),
  pitch: z
    .number()
    .min(0.5)
    .max(20)
    .optional()
    .describe("wanted spacing over diameter, 0.5 to 20; default 1.05; the real one is the nearest that closes evenly"),
  count: z.int().min(1).optional().describe("exact number of beads in each run, instead of a pitch"),
  embed: z
    .number()
    .min(0.1)
    .max(0.9)
    .default(PATTERN_DEFAULTS.bead.embed)
    .describe("share of the diameter below the surface that carries the bead, 0.1 to 0.9; default 0.5"),
  corners: z
    .enum(["pass", "on", "split"])
    .optional()
    .describe(
      "corners: pass (beads take no notice), on (a bead on each), split (equal gaps on both sides of each); default pass",
    ),
  cornerAngle: z
    .number()
    .min(5)
    .max(175)
    .optional()
    .describe("a corner is where the line turns by more than this, degrees, 5 to 175; default 30"),
  junctions: z
    .enum(["leave", "share"])
    .optional()
    .describe("where the run meets another that shares too: leave, or share one bead there; default leave"),
};
