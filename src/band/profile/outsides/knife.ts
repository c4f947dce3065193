/** Two slopes that meet in a ridge. */
import { z } from "zod";
import type { OutsideForm } from "../form.js";
import { EDGE_DEFAULT } from "../limits.js";

/** Rise in mm: common practice, no source. Ridge as the other edges. */
export const KNIFE_DEFAULTS = { rise: 0.6, ridge: EDGE_DEFAULT, edge: EDGE_DEFAULT } as const;

export const knifeSchema = z
  .strictObject({
    form: z.literal("knife"),
    rise: z
      .number()
      .min(0)
      .default(KNIFE_DEFAULTS.rise)
      .describe("Height of the sharp ridge above the side walls' top, mm, 0 or more; default 0.6."),
    ridge: z
      .number()
      .min(0)
      .default(KNIFE_DEFAULTS.ridge)
      .describe("Radius of the ridge's nose, mm, 0 (sharp) or more; it lowers the ridge; default 0.2."),
    edge: z
      .number()
      .min(0)
      .default(KNIFE_DEFAULTS.edge)
      .describe("Radius of the rounded outer edges, mm, 0 (sharp) or more; default 0.2."),
  })
  .describe("Two slopes that meet in a ridge; the pattern sits on both and over the nose.");

export type KnifeSpec = z.output<typeof knifeSchema>;

export const knife: OutsideForm<KnifeSpec> = {
  sketch({ rise, ridge, edge }, { halfWidth, top }) {
    const side = top - rise;
    return {
      links: [
        {
          segment: { kind: "line", from: [halfWidth, side], to: [0, top] },
          round: ridge,
          field: "ridge",
          seat: true,
        },
        { segment: { kind: "line", from: [0, top], to: [-halfWidth, side] }, round: edge, seat: true },
      ],
      edge,
      thins: "rise",
    };
  },
};
