/**
 * How stones are held, in one of five forms. A new form is a file in settings/ and its place in the list.
 */
import { z } from "zod";
import { beadSetSchema } from "./settings/bead-set.js";
import { bezelSchema } from "./settings/bezel.js";
import { channelSchema } from "./settings/channel.js";
import { flushSchema } from "./settings/flush.js";
import { prongsSchema } from "./settings/prongs.js";

export const settingSchema = z
  .discriminatedUnion("form", [flushSchema, beadSetSchema, channelSchema, bezelSchema, prongsSchema])
  .describe("how they are held");

export type SettingSpec = z.output<typeof settingSchema>;
