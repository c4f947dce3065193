/**
 * The fields that several sections share, and their defaults.
 */
import { z } from "zod";

export const WALL_DEFAULTS = { draft: 0, round: 0, bevel: 0 } as const;

export const draftField = z
  .number()
  .min(0)
  .max(60)
  .default(WALL_DEFAULTS.draft)
  .describe("how far walls lean in, degrees, 0 to 60; the foot grows; default 0");

export const heightField = z.number().positive().max(10);

export const wallField = z
  .number()
  .min(0)
  .max(10)
  .default(0)
  .describe("height of the wall it stands on, mm, under the height; default 0");

export const reachField = z
  .number()
  .positive()
  .max(50)
  .optional()
  .describe("mm inside the outline where it levels out; default the middle of the widest place");

export const edgeRadiusField = z
  .number()
  .min(0)
  .max(10)
  .default(0)
  .describe("radius of the edge above the wall, mm; default 0");
