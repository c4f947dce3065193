/**
 * What of an SVG file counts: the document's `take`.
 */
import { z } from "zod";

const part = z.string().min(1).max(300);

export const takeSchema = z
  .strictObject({
    only: z.array(part).min(1).max(50).optional().describe("what alone is taken; default all"),
    without: z.array(part).min(1).max(50).optional().describe("what is left out, not cut out; default none"),
  })
  .describe("what of the svg file counts: colours (white, #fff), id:NAME, layer:NAME; default all that is painted")
  .meta({ id: "take" });

/** Colours as CSS writes them, `id:` and `layer:` with a name. */
export type TakeSpec = z.output<typeof takeSchema>;
