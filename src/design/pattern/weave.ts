/**
 * The weave's part of a ribbon: that it passes over and under what it crosses.
 */
import { z } from "zod";

const WEAVE_DEFAULTS = { set: "", over: "alternate" } as const;

export const weaveSchema = z
  .strictObject({
    lift: z
      .number()
      .positive()
      .max(5)
      .describe("mm by which the ribbon's top rises above its own height where it passes over another, above 0"),
    run: z
      .number()
      .positive()
      .max(50)
      .optional()
      .describe("mm along the ribbon over which it rises to that; default its width, less near the next crossing"),
    set: z
      .string()
      .max(200)
      .default(WEAVE_DEFAULTS.set)
      .describe("ribbons of one set are woven with each other; default all without one"),
    over: z
      .enum(["alternate", "later"])
      .default(WEAVE_DEFAULTS.over)
      .describe(
        "alternate: over and under by turns; at the crossing nearest to the tile's left border, of several the lowest, the later region passes over, of one region the line at the smaller angle counter-clockwise from the band's direction; later: the later region passes over; the same in a whole set; default alternate",
      ),
  })
  .describe("weaves the ribbon with others and with itself: it bridges what it passes over");

export type WeaveSpec = z.output<typeof weaveSchema>;
