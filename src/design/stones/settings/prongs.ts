/**
 * Prongs: posts beside the stone, notched for its girdle and bent over its crown.
 */
import { z } from "zod";
import { settingFields } from "../ready.js";

/**
 * Height: 60 to 80 % of the table's (gia.edu benchmark), chosen between. Notch: 40 % of the prong (gia.edu), at most 50 %
 * (professionaljeweler, July 2004), at most 25 % (a US supplier's CAD sheet): sources differ. Tip: 0.8–1.0 over a base of
 * 1.4–1.8 (jewellersreviews.com), so 0.6.
 */
const PRONGS_DEFAULTS = { count: 4, tip: 0.6, height: 0.7, notch: 0.4, shared: false, turn: 45 } as const;

export const prongsSchema = z.strictObject({
  form: z.literal("prongs"),
  ...settingFields,
  count: z.int().min(3).max(8).default(PRONGS_DEFAULTS.count).describe("prongs of a stone, 3 to 8; default 4"),
  diameter: z
    .number()
    .min(0.3)
    .max(4)
    .optional()
    .describe("of a prong at its foot, mm, 0.3 to 4; default 0.2 of the stone's width, at least 0.6"),
  tip: z
    .number()
    .min(0.3)
    .max(1)
    .default(PRONGS_DEFAULTS.tip)
    .describe("width of its tip, share of its foot, 0.3 to 1; default 0.6"),
  height: z
    .number()
    .min(0.1)
    .max(1.5)
    .default(PRONGS_DEFAULTS.height)
    .describe("height over the girdle, share of the crown's, 0.1 to 1.5; default 0.7"),
  notch: z
    .number()
    .min(0.1)
    .max(0.5)
    .default(PRONGS_DEFAULTS.notch)
    .describe("how deep the girdle goes into it, share of its width there, 0.1 to 0.5; default 0.4"),
  shared: z.boolean().default(PRONGS_DEFAULTS.shared).describe("whether neighbours share prongs; default false"),
  turn: z
    .number()
    .min(-180)
    .max(180)
    .default(PRONGS_DEFAULTS.turn)
    .describe("where the first stands, degrees from the stone's length, -180 to 180; default 45"),
});

export type ProngsSpec = z.output<typeof prongsSchema>;
