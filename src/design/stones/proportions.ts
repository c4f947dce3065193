/**
 * How a stone is cut: proportions by name, or as they are measured.
 */
import { z } from "zod";

const share = (least: number, most: number, said: string) =>
  z.number().min(least).max(most).optional().describe(`${said}, share of the width, ${least} to ${most}`);

const slope = (said: string) => z.number().min(3).max(80).optional().describe(`${said}, degrees, 3 to 80`);

export const proportionsSchema = z
  .union([
    z.enum(["usual", "tolkowsky"]),
    z.strictObject({
      table: share(0.1, 0.95, "table"),
      crownAngle: slope("of the crown's main facets"),
      crownHeight: share(0.01, 1, "instead of that: height of the crown, of a cabochon its dome"),
      girdle: share(0, 0.3, "height of the girdle"),
      pavilionAngle: slope("of the pavilion's main facets"),
      pavilionDepth: share(0.01, 1.5, "instead of that: depth of the pavilion"),
      culet: share(0, 0.5, "culet"),
    }),
  ])
  .default("usual")
  .describe("usual, tolkowsky (round), or measured, what is left out as usual; default usual");

export type ProportionsSpec = z.output<typeof proportionsSchema>;
