/**
 * The `sprue` part of the document: the stem that metal flows in by, drawn on the casting and the master.
 */
import { z } from "zod";

/** Defaults; mm and degrees. The back of the band and a rounded root: common practice, no source. */
const SPRUE_DEFAULTS = { at: 270, across: 0, fillet: 0.5 } as const;

export const sprueSchema = z.strictObject({
  diameter: z
    .number()
    .min(0.5)
    .max(10)
    .describe("of the stem at the band, without its fillet, mm, 0.5 to 10; ask your caster"),
  length: z.number().min(1).max(60).describe("from the band to its end, mm, 1 to 60"),
  end: z.number().min(0.5).max(20).optional().describe("diameter there, mm, 0.5 to 20; default the same"),
  at: z
    .number()
    .min(-360)
    .max(360)
    .default(SPRUE_DEFAULTS.at)
    .describe("where it stands, degrees, -360 to 360, the top is 90; default 270, the back"),
  across: z
    .number()
    .min(-50)
    .max(50)
    .default(SPRUE_DEFAULTS.across)
    .describe("mm from the middle, + towards +z, -50 to 50; default 0"),
  fillet: z
    .number()
    .min(0)
    .max(5)
    .default(SPRUE_DEFAULTS.fillet)
    .describe("radius where it joins the band, mm, 0 to 5; default 0.5"),
});

/** A sprue as the pipeline takes it. */
export type SprueSpec = z.output<typeof sprueSchema>;
