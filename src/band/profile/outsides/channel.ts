/** A channel between two raised rails. */
import { arcBySagitta } from "../../../base/math/curve.js";
import type { Point2 } from "../../../base/math/point.js";
import type { ChannelSpec } from "../../../design/profile/outsides/channel.js";
import type { OutsideForm, OutsideLink } from "../form.js";
import { LEAST_SEAT } from "../least-sizes.js";
import { Misfit } from "../misfit.js";

export const channel: OutsideForm<ChannelSpec> = {
  finished: "rails",
  grown(spec, { outside }) {
    return { ...spec, depth: spec.depth + outside };
  },
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
