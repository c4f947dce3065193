/**
 * The weave's part of a ribbon: that it passes over and under what it crosses.
 */
import { z } from "zod";

const WEAVE_DEFAULTS = { set: "", over: "alternate" } as const;

export const weaveSchema = z
  .strictObject({
    lift: z.number().positive().max(5).describe("mm by which its top rises where it passes over another, above 0"),
    run: z
      .number()
      .positive()
      .max(50)
      .optional()
      .describe("mm along the ribbon over which it rises; default its width, less near a crossing"),
    set: z.string().max(200).default(WEAVE_DEFAULTS.set).describe("ribbons of one set are woven with each other"),
    over: z
      .enum(["alternate", "later"])
      .default(WEAVE_DEFAULTS.over)
      .describe(
        "alternate: over and under by turns; at the tile's leftmost, lowest crossing the later region is over, of one region the line at the smaller angle from the band; later: the later region is over; one for a set; default alternate",
      ),
  })
  .describe("weaves it with others and itself: it bridges what it passes over");

export type WeaveSpec = z.output<typeof weaveSchema>;
