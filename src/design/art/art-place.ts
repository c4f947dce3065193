/**
 * Where a drawing stands in its tile: the document's `place`.
 */
import { z } from "zod";

export const PLACE_DEFAULTS = { by: "page", anchor: "centre", scale: 1, turn: 0, mirror: false } as const;

/** Points of the drawing that may stand at a place. */
const anchorNames = [
  "centre",
  "left",
  "right",
  "top",
  "bottom",
  "top-left",
  "top-right",
  "bottom-left",
  "bottom-right",
] as const;

export type AnchorName = (typeof anchorNames)[number];

const side = z.number().positive().max(1000);

const coordinate = z.number().min(-1000).max(1000);

export const placeSchema = z
  .strictObject({
    by: z
      .enum(["page", "art"])
      .default(PLACE_DEFAULTS.by)
      .describe(
        "page (the file's width, height and viewBox) or art (the box round all that is painted); without a page the art; default page",
      ),
    fit: z
      .union([z.tuple([side, side]), z.literal("drawn")])
      .optional()
      .describe(
        "width and height of the box it fills in its proportions, region's unit, or drawn (its own size, px being 1/96 inch); default the tile",
      ),
    anchor: z
      .enum(anchorNames)
      .default(PLACE_DEFAULTS.anchor)
      .describe("its point that stands at `at`; default centre"),
    scale: z
      .number()
      .min(0.001)
      .max(1000)
      .default(PLACE_DEFAULTS.scale)
      .describe("factor on the fitted size, 0.001 to 1000; default 1"),
    at: z
      .tuple([coordinate, coordinate])
      .optional()
      .describe("where the anchor stands, region's unit; default the tile's middle"),
    turn: z
      .number()
      .min(-360)
      .max(360)
      .default(PLACE_DEFAULTS.turn)
      .describe("degrees counter-clockwise about it, -360 to 360; default 0"),
    mirror: z
      .boolean()
      .default(PLACE_DEFAULTS.mirror)
      .describe("whether left and right change places, before turning; default false"),
  })
  .describe("where it stands in the tile; default filling it")
  .meta({ id: "place" });

export type PlaceSpec = z.infer<typeof placeSchema>;
