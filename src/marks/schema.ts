/**
 * The part of the design document that says what stands at one place of the band: lettering, and a plain field for a
 * hallmark.
 */
import { z } from "zod";
import { DEFAULT_FONT } from "../lettering/load.js";

/** Longest text, characters; a chosen limit, above what goes round a finger. */
export const MAX_TEXT_LENGTH = 200;

/** Defaults; mm and degrees. Sizes: common practice, no source. */
export const MARK_DEFAULTS = {
  angle: 90,
  v: 0,
  side: "+z",
  lettering: { at: "seat", font: DEFAULT_FONT, height: 2, spacing: 0, mode: "sunk", depth: 0.25, relief: 0.3 },
  edge: { round: 0, draft: 0 },
  up: "+z",
  hallmark: { at: "bore", angle: 270, width: 5, height: 2, depth: 0.1, corner: 0.4 },
} as const;

const surface = z.enum(["seat", "rail", "bore"]);

const side = z.enum(["+z", "-z"]).optional().describe("rail only: the rail towards +z or towards -z; default +z");

const across = z
  .number()
  .min(-50)
  .max(50)
  .default(MARK_DEFAULTS.v)
  .describe("mm from the surface's middle line, + towards +z, -50 to 50; default 0");

/** The fields that say which text is set and how. */
export const textFields = {
  text: z
    .string()
    .min(1)
    .max(MAX_TEXT_LENGTH)
    .describe(`what is set, one line of one direction, 1 to ${MAX_TEXT_LENGTH} characters`),
  font: z
    .string()
    .min(1)
    .max(300)
    .default(DEFAULT_FONT)
    .describe(
      "font file, OpenType, TrueType or WOFF: a name beside the design, or package: and its path in an npm package; default Nunito ExtraBold, which annulet brings",
    ),
  spacing: z
    .number()
    .min(-5)
    .max(20)
    .default(MARK_DEFAULTS.lettering.spacing)
    .describe("mm between letters beside what the font says, -5 to 20; default 0"),
};

export const letteringSchema = z
  .strictObject({
    ...textFields,
    at: surface
      .default(MARK_DEFAULTS.lettering.at)
      .describe("the surface that carries it: seat, rail (its flat top) or bore (read from inside); default seat"),
    side,
    angle: z
      .number()
      .min(-360)
      .max(360)
      .default(MARK_DEFAULTS.angle)
      .describe("where the text's middle stands, degrees counter-clockwise from +x seen from +z; default 90, the top"),
    v: across,
    height: z
      .number()
      .min(0.3)
      .max(20)
      .default(MARK_DEFAULTS.lettering.height)
      .describe("height of capitals, mm, 0.3 to 20; default 2"),
    up: z.enum(["+z", "-z"]).default(MARK_DEFAULTS.up).describe("where the letters' tops point, +z or -z; default +z"),
    mode: z
      .enum(["raised", "sunk"])
      .default(MARK_DEFAULTS.lettering.mode)
      .describe("raised on the surface or sunk into it, through all that stands there; default sunk"),
    depth: z
      .number()
      .positive()
      .max(5)
      .optional()
      .describe("sunk only: depth below the surface, mm, above 0; default 0.25"),
    relief: z
      .number()
      .positive()
      .max(5)
      .optional()
      .describe("raised only: height above the surface, mm, above 0; default 0.3"),
    round: z
      .number()
      .min(0)
      .max(2)
      .default(MARK_DEFAULTS.edge.round)
      .describe(
        "radius of the top's edge, of sunk letters the floor's, mm; at most half the narrowest stroke; default 0",
      ),
    draft: z
      .number()
      .min(0)
      .max(60)
      .default(MARK_DEFAULTS.edge.draft)
      .describe("how far the walls lean, degrees, 0 (upright) to 60; letters grow at the surface; default 0"),
  })
  .superRefine(({ at, side: rail, mode, depth, relief }, context) => {
    const complain = (field: string, message: string) => context.addIssue({ code: "custom", path: [field], message });
    if (rail !== undefined && at !== "rail") complain("side", `belongs to "at": "rail", not ${at}`);
    if (depth !== undefined && mode !== "sunk") complain("depth", "does not belong to raised lettering; say relief");
    if (relief !== undefined && mode !== "raised") complain("relief", "does not belong to sunk lettering; say depth");
  });

export type LetteringSpec = z.output<typeof letteringSchema>;
