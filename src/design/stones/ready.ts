/**
 * What every setting has: how much of it the casting brings along, and how wide the hole below the bearing is.
 */
import { z } from "zod";

/** Share of the stone's width: a half to seven tenths, pfingstco.com and T. Weishaar, ganoksin; the middle of it, chosen. */
const PILOT = 0.6;

export const settingFields = {
  ready: z
    .enum(["pilot", "bearing", "full"])
    .default("full")
    .describe("how much is cast: pilot (hole alone), bearing (without grains and notches), full; default full"),
  pilot: z
    .number()
    .min(0.2)
    .max(0.9)
    .default(PILOT)
    .describe("width of the hole below the bearing, share of the stone's, 0.2 to 0.9; default 0.6"),
};
