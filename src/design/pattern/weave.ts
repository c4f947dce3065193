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
      .describe(
        "mm along the ribbon over which it rises to that; default its width, or less where the next crossing is near",
      ),
    set: z
      .string()
      .max(200)
      .default(WEAVE_DEFAULTS.set)
      .describe("ribbons of one set are woven with each other; default all those that name none"),
    over: z
      .enum(["alternate", "later"])
      .default(WEAVE_DEFAULTS.over)
      .describe(
        "alternate: each strand passes over and under by turns; at the crossing nearest to the tile's left border, of several the lowest, the region later in the list passes over, of one region the line at the smaller angle counter-clockwise from the band's direction; later: the region that stands later in the list passes over; the same in a whole set; default alternate",
      ),
  })
  .describe("weaves the ribbon with others and with itself: it bridges what it passes over");

export type WeaveSpec = z.output<typeof weaveSchema>;
