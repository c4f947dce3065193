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
    .describe("mm the completed region or ribbon is grown, -5 to 5; below 0 it shrinks; default 0"),
  within: z
    .array(regionName)
    .min(1)
    .max(MAX_OTHERS)
    .optional()
    .describe(
      "regions, as completed, in any of which it is kept, and 0.02 mm beyond, so that bodies join; default none",
    ),
  without: z
    .array(
      z.union([
        regionName,
        z.strictObject({
          region: regionName.describe("name of a region"),
          gap: z.number().min(LAP).max(5).describe(`clearance kept from it, mm, ${LAP} to 5`),
        }),
      ]),
    )
    .min(1)
    .max(MAX_OTHERS)
    .optional()
    .describe(
      "regions, as completed, taken away from it; without a gap they overlap by 0.02 mm, so that bodies join; default none",
    ),
};

const composeSchema = z.strictObject(composeFields);

/** How a region is composed with others. */
export type ComposeSpec = z.infer<typeof composeSchema>;
