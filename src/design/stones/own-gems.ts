/**
 * Gems that the catalogue does not have.
 */
import { z } from "zod";

/** Most gems of its own a document may have; a chosen limit. */
const MAX_OWN = 50;

const ownGemSchema = z.strictObject({
  symbol: z
    .string()
    .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, "must be 1 to 40 small letters, digits and hyphens")
    .describe("1 to 40 small letters, digits, hyphens; not built in"),
  name: z.string().min(1).max(100).optional().describe("in tables; default its symbol"),
  density: z.number().min(0.5).max(23).describe("g/cm³, 0.5 to 23"),
  hardness: z.number().min(1).max(10).optional().describe("by Mohs, 1 to 10; default not said"),
  source: z.string().min(1).max(300).optional().describe("where its figures come from; default the design"),
});

export const ownGemsSchema = z
  .array(ownGemSchema)
  .max(MAX_OWN)
  .describe(`gems of your own, at most ${MAX_OWN}; default none`);

export type OwnGemSpec = z.output<typeof ownGemSchema>;
