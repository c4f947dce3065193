/**
 * The options of a fit, which every other question about a ring takes too. They stand by themselves, so that a page that
 * only fits has no kernels and pictures in it.
 */
import { z } from "zod";
import type { Warn } from "../../base/errors.js";
import type { Limits } from "../../base/limits.js";
import { functionField } from "../../design/option-fields.js";

const aboveNone = z.number().positive();

const limits: z.ZodType<Partial<Limits>> = z.strictObject({
  seconds: aboveNone.optional().describe("seconds by the clock, above 0; default 1800"),
  triangles: aboveNone.optional().describe("triangles of the ring, above 0; default 5 million"),
  corners: aboveNone.optional().describe("corners of all drawn art in all its copies, above 0; default 4 million"),
});

export const FIT_FIELDS = {
  warn: functionField<Warn>("takes warnings").optional(),
  limits: limits.optional(),
};

/** What `fitDesign` takes. */
export const fitOptions = z.strictObject(FIT_FIELDS);
