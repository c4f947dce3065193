/**
 * The fields of a region that compose it with others: how far it is grown, what it is kept within and clear of.
 */
import { z } from "zod";

const regionName = z.string().min(1).max(200);

/** Most regions that one names. Chosen. */
const MAX_OTHERS = 100;

/**
 * How far regions that meet along another's outline lie over it, mm. Bodies whose walls coincide do not unite cleanly:
 * without it 11 of 256 random rings or more did not close, with it none of 287 for that reason. Chosen: above the 8 µm
 * below which hairlines are cleaned, below what finishing takes off.
 */
export const LAP = 0.02;

/** The fields of a region that compose it with others once symmetry has completed it. */
export const composeFields = {
  offset: z
    .number()
    .min(-5)
    .max(5)
    .optional()
    .describe("how far the completed region, or its ribbon, is grown, mm, -5 to 5; below 0 it is shrunk; default 0"),
  within: z
    .array(regionName)
    .min(1)
    .max(MAX_OTHERS)
    .optional()
    .describe(
      "names of regions: only what lies in any of them, as completed, is kept, and 0.02 mm more, so that bodies join; default all is",
    ),
  without: z
    .array(
      z.union([
        regionName,
        z.strictObject({
          region: regionName.describe("name of a region of this list"),
          gap: z.number().min(LAP).max(5).describe(`clearance kept from it, mm, ${LAP} to 5; without one the two meet`),
        }),
      ]),
    )
    .min(1)
    .max(MAX_OTHERS)
    .optional()
    .describe(
      "regions, by name or as {region, gap}, that are taken away from it as completed; without a gap the two overlap by 0.02 mm, so that bodies join; default none",
    ),
};

const composeSchema = z.strictObject(composeFields);

/** How a region is composed with others. */
export type ComposeSpec = z.infer<typeof composeSchema>;
