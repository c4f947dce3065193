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
      .describe("Width of each rail, mm, above 0, under half the band's; default 0.9."),
    depth: z
      .number()
      .positive()
      .default(CHANNEL_DEFAULTS.depth)
      .describe("From the rails' top down to the floor's edges, mm, above 0; default 0.5."),
    crown: z
      .number()
      .min(0)
      .default(CHANNEL_DEFAULTS.crown)
      .describe("How far its middle stands above its edges, mm, to the depth; default 0."),
    edge: z
      .number()
      .min(0)
      .default(CHANNEL_DEFAULTS.edge)
      .describe("Radius of their top corners, mm, to half the rail; default 0.2."),
    root: z
      .number()
      .min(0)
      .default(CHANNEL_DEFAULTS.root)
      .describe("Fillet from floor to rails, mm, 0 or more; default 0."),
  })
  .describe("Two rails, pattern on the floor between them.");

export type ChannelSpec = z.output<typeof channelSchema>;
