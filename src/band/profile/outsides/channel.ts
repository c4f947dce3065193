/** A channel between two raised rails. */
import { z } from "zod";
import { arcBySagitta } from "../../../base/math/curve.js";
import type { Point2 } from "../../../base/math/point.js";
import type { OutsideForm, OutsideLink } from "../form.js";
import { EDGE_DEFAULT, LEAST_SEAT } from "../limits.js";
import { Misfit } from "../misfit.js";

/** Rail and depth in mm: common practice, no source. */
export const CHANNEL_DEFAULTS = { rail: 0.9, depth: 0.5, crown: 0, edge: EDGE_DEFAULT, root: 0 } as const;

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
      .describe("From the rails' top down to the floor, measured at the floor's edges, mm, above 0; default 0.5."),
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

export const channel: OutsideForm<ChannelSpec> = {
  sketch({ rail, depth, crown, edge, root }, { halfWidth, top }) {
    const half = halfWidth - rail;
    if (2 * half < LEAST_SEAT) {
      throw new Misfit("rail-too-wide", "the rails leave no channel between them", ["outside.rail"]);
    }
    if (crown > depth || crown > half) {
      const why = crown > depth ? "stands above the rails" : "rises more than half its width";
      throw new Misfit("crown-too-high", `the channel's floor ${why}`, ["outside.crown"]);
    }
    const floor = top - depth;
    const line = (from: Point2, to: Point2, rest: Omit<OutsideLink, "segment">): OutsideLink => ({
      segment: { kind: "line", from, to },
      ...rest,
    });
    return {
      links: [
        line([halfWidth, top], [half, top], { round: edge, field: "edge", rail: true }),
        line([half, top], [half, floor], { round: root, field: "root" }),
        {
          segment: arcBySagitta([half, floor], [-half, floor], crown),
          round: root,
          field: "root",
          seat: true,
        },
        line([-half, floor], [-half, top], { round: edge, field: "edge" }),
        line([-half, top], [-halfWidth, top], { round: edge, rail: true }),
      ],
      edge,
      thins: "depth",
    };
  },
};
