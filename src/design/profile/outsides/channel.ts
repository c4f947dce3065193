/**
 * A channel between two raised rails: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

/** Rail and depth in mm: common practice, no source. */
const CHANNEL_DEFAULTS = { rail: 0.9, depth: 0.5, crown: 0, edge: EDGE_DEFAULT, root: 0 } as const;

export const channelSchema = z
  .strictObject({
    form: z.literal("channel"),
    rail: z
      .number()
      .positive()
      .default(CHANNEL_DEFAULTS.rail)
      .describe("Width of each rail, mm, above 0 and under half the band's width; default 0.9."),
    depth: z
      .number()
      .positive()
      .default(CHANNEL_DEFAULTS.depth)
      .describe("From the rails' top down to the floor's edges, mm, above 0; default 0.5."),
    crown: z
      .number()
      .min(0)
      .default(CHANNEL_DEFAULTS.crown)
      .describe("By how much the floor's middle stands above its edges, mm, 0 (flat) to the depth; default 0."),
    edge: z
      .number()
      .min(0)
      .default(CHANNEL_DEFAULTS.edge)
      .describe("Radius of the rails' rounded top corners, mm, 0 (sharp) to half the rail; default 0.2."),
    root: z
      .number()
      .min(0)
      .default(CHANNEL_DEFAULTS.root)
      .describe("Radius of the fillet where the floor meets the rails, mm, 0 (sharp) or more; default 0."),
  })
  .describe("Two rails with a channel between them; the pattern sits on the channel's floor.");

export type ChannelSpec = z.output<typeof channelSchema>;
