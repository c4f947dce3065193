/**
 * A flush setting: the stone sunk into the metal, its table level with the surface.
 */
import { z } from "zod";
import { settingFields } from "../ready.js";

export const flushSchema = z.strictObject({ form: z.literal("flush"), ...settingFields });
