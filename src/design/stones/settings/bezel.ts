/**
 * A bezel: a wall all round the stone, which is pushed over its edge.
 */
import { z } from "zod";
import { settingFields } from "../ready.js";

/**
 * Wall: at least 0.5 mm cast (a US supplier's CAD sheet). Height: over the girdle to the lower third of the crown, common
 * practice, no source; of a cabochon at least a third (lucywalkerjewellery.com). Ledge: chosen.
 */
const BEZEL_DEFAULTS = { wall: 0.5, height: 0.35, ledge: 0.3 } as const;

export const bezelSchema = z.strictObject({
  form: z.literal("bezel"),
  ...settingFields,
  wall: z
    .number()
    .min(0.2)
    .max(3)
    .default(BEZEL_DEFAULTS.wall)
    .describe("thickness of its wall, mm, 0.2 to 3; default 0.5"),
  height: z
    .number()
    .min(0.1)
    .max(1)
    .default(BEZEL_DEFAULTS.height)
    .describe("height over the girdle, share of the crown's, 0.1 to 1; default 0.35"),
  ledge: z
    .number()
    .min(0.1)
    .max(3)
    .default(BEZEL_DEFAULTS.ledge)
    .describe("width of the ledge that the stone rests on, mm, 0.1 to 3; default 0.3"),
});
