/**
 * The `pattern` part of the document: one pattern all over the seat, or several side by side in lanes.
 */
import { z } from "zod";
import { checkComposition } from "../composition-rules.js";
import { shapeSchema } from "../shapes/shape.js";
import { parts } from "./area.js";
import { PATTERN_DEFAULTS } from "./defaults.js";
import { fitSchema } from "./fit.js";

const laneSchema = z.strictObject({
  name: z.string().min(1).max(200).optional().describe("what messages call it; default lane and its number"),
  share: z
    .number()
    .min(0.01)
    .max(100)
    .default(PATTERN_DEFAULTS.share)
    .describe("share of the seat beside the others', 0.01 to 100; default 1"),
  fit: fitSchema.omit({ hold: true, taper: true }).prefault({}).describe("tiles round the band"),
  ...parts,
});

export const patternSchema = z
  .strictObject({
    fit: fitSchema.prefault({}).describe("tiles round the band and what gives way"),
    cover: z
      .number()
      .min(5)
      .max(360)
      .default(PATTERN_DEFAULTS.cover)
      .describe("degrees that carry the pattern, centred on the top, 5 to 360; default 360"),
    plain: z
      .enum(["open", "filled"])
      .optional()
      .describe("the plain zone of a channel: open (its floor lies bare) or filled up to the rails; default open"),
    shapes: z
      .record(z.string().min(1).max(200), shapeSchema)
      .optional()
      .describe('shapes by name, which others take as {"shape": name}; default none'),
    ...parts,
    lanes: z
      .array(laneSchema)
      .min(2)
      .max(20)
      .optional()
      .describe(
        "patterns side by side, lowest (-z) first, 2 to 20, instead of one art; they share cover, shapes, gap, fit.hold, fit.taper",
      ),
    gap: z
      .number()
      .min(0)
      .max(20)
      .default(PATTERN_DEFAULTS.gap)
      .describe("plain seat between lanes, mm, 0 to 20; default 0.3"),
  })
  .superRefine(checkComposition);

export type PatternSpec = z.infer<typeof patternSchema>;
