/**
 * What stands at one place of the band: lettering, and a plain field for a hallmark.
 */
import { z } from "zod";
import { textFields } from "./art/text-fields.js";
import { complainTo } from "./complain.js";

/** Defaults; mm and degrees. Sizes: common practice, no source. */
export const MARK_DEFAULTS = {
  angle: 90,
  v: 0,
  side: "+z",
  lettering: { at: "seat", height: 2, mode: "sunk", depth: 0.25, relief: 0.3 },
  edge: { round: 0, draft: 0 },
  up: "+z",
  hallmark: { at: "bore", angle: 270, width: 5, height: 2, depth: 0.1, corner: 0.4 },
} as const;

const surface = z.enum(["seat", "rail", "bore"]);

const side = z.enum(["+z", "-z"]).optional().describe("rail: the one towards +z or -z; default +z");

const across = z
  .number()
  .min(-50)
  .max(50)
  .default(MARK_DEFAULTS.v)
  .describe("mm from the surface's middle, + towards +z, -50 to 50; default 0");

export const letteringSchema = z
  .strictObject({
    ...textFields,
    at: surface
      .default(MARK_DEFAULTS.lettering.at)
      .describe("seat, rail (its flat top) or bore (read from inside); default seat"),
    side,
    angle: z
      .number()
      .min(-360)
      .max(360)
      .default(MARK_DEFAULTS.angle)
      .describe("where its middle stands, degrees from +x towards +y; default 90, the top"),
    v: across,
    height: z
      .number()
      .min(0.3)
      .max(20)
      .default(MARK_DEFAULTS.lettering.height)
      .describe("height of capitals, mm, 0.3 to 20; default 2"),
    up: z.enum(["+z", "-z"]).default(MARK_DEFAULTS.up).describe("where the letters' tops point; default +z"),
    mode: z
      .enum(["raised", "sunk"])
      .default(MARK_DEFAULTS.lettering.mode)
      .describe("raised, or sunk through all that stands there; default sunk"),
    depth: z.number().positive().max(5).optional().describe("sunk: depth, mm, above 0; default 0.25"),
    relief: z.number().positive().max(5).optional().describe("raised: height, mm, above 0; default 0.3"),
    round: z
      .number()
      .min(0)
      .max(2)
      .default(MARK_DEFAULTS.edge.round)
      .describe("radius of the edge of top or floor, mm, to half the narrowest stroke; default 0"),
    draft: z
      .number()
      .min(0)
      .max(60)
      .default(MARK_DEFAULTS.edge.draft)
      .describe("how far walls lean, degrees, 0 to 60; letters grow at the surface; default 0"),
  })
  .superRefine(({ at, side: rail, mode, depth, relief }, context) => {
    const complain = complainTo(context);
    if (rail !== undefined && at !== "rail") complain("side", `belongs to "at": "rail", not ${at}`);
    if (depth !== undefined && mode !== "sunk") complain("depth", "does not belong to raised lettering; say relief");
    if (relief !== undefined && mode !== "raised") complain("relief", "does not belong to sunk lettering; say depth");
  });

export type LetteringSpec = z.output<typeof letteringSchema>;

export const hallmarkSchema = z
  .strictObject({
    at: surface.default(MARK_DEFAULTS.hallmark.at).describe("seat, rail (its flat top) or bore; default bore"),
    side,
    angle: z
      .number()
      .min(-360)
      .max(360)
      .default(MARK_DEFAULTS.hallmark.angle)
      .describe("where its middle stands, degrees from +x towards +y; default 270, opposite the top"),
    v: across,
    width: z
      .number()
      .min(0.5)
      .max(50)
      .default(MARK_DEFAULTS.hallmark.width)
      .describe("round the band, mm, 0.5 to 50; default 5"),
    height: z
      .number()
      .min(0.5)
      .max(50)
      .default(MARK_DEFAULTS.hallmark.height)
      .describe("across the band, mm, 0.5 to 50; default 2"),
    depth: z
      .number()
      .min(0)
      .max(5)
      .default(MARK_DEFAULTS.hallmark.depth)
      .describe("depth below the surface, mm; 0 keeps it plain; default 0.1"),
    corner: z
      .number()
      .min(0)
      .max(25)
      .default(MARK_DEFAULTS.hallmark.corner)
      .describe("radius of its corners, mm, to half its width and height; default 0.4"),
  })
  .superRefine(({ at, side: rail, width, height, corner }, context) => {
    const complain = complainTo(context);
    if (rail !== undefined && at !== "rail") complain("side", `belongs to "at": "rail", not ${at}`);
    if (2 * corner > Math.min(width, height)) complain("corner", "is more than half of the width or the height");
  });

export type HallmarkSpec = z.output<typeof hallmarkSchema>;
