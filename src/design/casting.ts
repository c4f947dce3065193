/**
 * The `casting` part of the document: what is added to the finished piece for casting and finishing.
 */
import { z } from "zod";
import { MOST_FINISHING, SHRINKAGE_RANGE } from "./casting-spec.js";

/** Defaults; % and mm. None: the figures are the caster's. */
export const CASTING_DEFAULTS = { shrinkage: 0, cure: 0, finishing: 0, pattern: "resin" } as const;

const { min, max } = SHRINKAGE_RANGE;

const percent = z.number().min(min).max(max);

const shrinkage = (what: string) =>
  z
    .union([
      percent,
      z
        .strictObject({
          axial: percent.describe(`along the finger axis, %, ${min} to ${max}`),
          radial: percent.describe(`across the finger axis, %, ${min} to ${max}`),
        })
        .describe("one along the finger axis, one across"),
    ])
    .describe(`${what}, linear, %, ${min} to ${max}, or {axial, radial}; default 0; the master is 1/(1 − s) as large`);

const face = (of: string) =>
  z.number().min(0).max(MOST_FINISHING).default(0).describe(`off ${of}, mm, 0 to ${MOST_FINISHING}; default 0`);

export const castingSchema = z.strictObject({
  shrinkage: shrinkage("shrinkage from pattern to casting; ask your caster").default(CASTING_DEFAULTS.shrinkage),
  cure: shrinkage("shrinkage from file to cured print; ask the resin's maker").default(CASTING_DEFAULTS.cure),
  finishing: z
    .union([
      z.number().min(0).max(MOST_FINISHING),
      z
        .strictObject({
          bore: face("the bore"),
          rails: face("the rails' tops; of a plain band, all its outside"),
          relief: face("the tops of what is raised"),
        })
        .describe("its own for each group of faces"),
    ])
    .default(CASTING_DEFAULTS.finishing)
    .describe(
      `what finishing takes off faces, mm, 0 to ${MOST_FINISHING}, or {bore, rails, relief}; default 0; not off side walls, floors, beads`,
    ),
  pattern: z
    .string()
    .default(CASTING_DEFAULTS.pattern)
    .describe("material of the master: resin, wax or wax-bees; default resin"),
});
