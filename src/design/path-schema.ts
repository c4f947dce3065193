/**
 * What every part of the document that holds path data says of it.
 */
import { z } from "zod";

/** Longest path data a document may carry, in characters: far above any hand-made motif, below what stalls a build. */
export const MAX_PATH_LENGTH = 200_000;

export const pathData = z
  .string()
  .min(1)
  .max(MAX_PATH_LENGTH)
  .describe("SVG path data in the tile: x 0 to 1 along the band, y from its middle towards +z");

/** Which parts of a path that crosses itself are inside. */
export const fillRule = z
  .enum(["nonzero", "evenodd"])
  .describe("what is inside where paths cross, as in SVG; default nonzero");

/** What lengths in a drawing are measured in. */
export const drawingUnit = z.enum(["tile", "mm"]);

export type DrawingUnit = z.infer<typeof drawingUnit>;
