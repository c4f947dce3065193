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
  .describe("draft of the walls: how far they lean in, degrees, 0 (upright) to 60; the foot grows; default 0");

export const heightField = z.number().positive().max(10);

export const wallField = z
  .number()
  .min(0)
  .max(10)
  .default(0)
  .describe("height of the wall on which it stands, mm, 0 to under the height; default 0: it rises from the seat");

export const reachField = z
  .number()
  .positive()
  .max(50)
  .optional()
  .describe("mm inside the outline where it ends; the rest is level; default the middle of the widest place");

export const edgeRadiusField = z
  .number()
  .min(0)
  .max(10)
  .default(0)
  .describe("radius of the edge between the wall and what rises from it, mm; needs a wall; default 0");
