/**
 * The `print` part of the document: how the mesh is turned before it is written, and what it is judged by.
 */
import { z } from "zod";
import { PRINT_DEFAULTS, PRINT_RANGES, PRINT_STANCES, UNTILTED } from "./print-settings.js";

const [leastTilt, mostTilt] = PRINT_RANGES.tilt;
const [leastLayer, mostLayer] = PRINT_RANGES.layer;
const [leastSupport, mostSupport] = PRINT_RANGES.support;

export const printSchema = z
  .strictObject({
    stance: z
      .enum(PRINT_STANCES)
      .default(PRINT_DEFAULTS.stance)
      .describe(
        "built (not turned), or set on z = 0: lying (finger axis upright), standing (top up), tilted; default built",
      ),
    tilt: z
      .number()
      .min(leastTilt)
      .max(mostTilt)
      .optional()
      .describe(
        `tilted: degrees, 0 (lying) to 90 (standing), ${leastTilt} to ${mostTilt}; default ${PRINT_DEFAULTS.tilt}`,
      ),
    layer: z
      .number()
      .min(leastLayer)
      .max(mostLayer)
      .default(PRINT_DEFAULTS.layer)
      .describe(`thickness of a layer, mm, ${leastLayer} to ${mostLayer}; default ${PRINT_DEFAULTS.layer}`),
    support: z
      .number()
      .min(leastSupport)
      .max(mostSupport)
      .default(PRINT_DEFAULTS.support)
      .describe(
        `steep undersides lean further from upright, degrees, ${leastSupport} to ${mostSupport}; default ${PRINT_DEFAULTS.support}`,
      ),
  })
  .refine(({ stance, tilt }) => tilt === undefined || stance === "tilted", {
    path: ["tilt"],
    message: UNTILTED.message,
    params: { allowed: UNTILTED.allowed },
  });
