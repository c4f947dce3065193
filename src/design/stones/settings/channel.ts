/**
 * A channel setting: a row of stones in a groove whose walls reach over them from both sides.
 */
import { z } from "zod";
import { settingFields } from "../ready.js";

/**
 * Cover: both walls together 10 to 15 % of the width (heartofgoldjewelers.com; JA guide, June 1998), so 5 to 7.5 % each, chosen
 * between. Bearing: 72 to 78° (M. Mann, Hoover & Strong), chosen between. Wall: 0.8 mm is a true minimum of castings
 * (apexjewelrycasting.com).
 */
const CHANNEL_DEFAULTS = { cover: 0.06, bearing: 75, wall: 0.8, rise: 0 } as const;

export const channelSchema = z.strictObject({
  form: z.literal("channel"),
  ...settingFields,
  cover: z
    .number()
    .min(0.02)
    .max(0.2)
    .default(CHANNEL_DEFAULTS.cover)
    .describe("how far each wall reaches over the stone, share of its width, 0.02 to 0.2; default 0.06"),
  bearing: z
    .number()
    .min(45)
    .max(90)
    .default(CHANNEL_DEFAULTS.bearing)
    .describe("angle between the two faces of the seat's notch, degrees, 45 to 90; default 75"),
  rise: z
    .number()
    .min(0)
    .max(5)
    .default(CHANNEL_DEFAULTS.rise)
    .describe("height of walls raised over the surface, mm, 0 to 5; 0 for none; default 0"),
  wall: z
    .number()
    .min(0.3)
    .max(5)
    .default(CHANNEL_DEFAULTS.wall)
    .describe("thickness of raised walls, mm, 0.3 to 5; default 0.8"),
});

export type ChannelSpec = z.output<typeof channelSchema>;
