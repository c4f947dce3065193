/**
 * Scales that lie over each other like tiles on a roof: circles in half drop, each without what the two above cover.
 */
import type { Point2 } from "../../base/math/point.js";
import { scaleMotif } from "../../design/motifs/scale.js";
import type { Motif } from "./motif.js";
import { box, disc } from "./outlines.js";

/**
 * Where a row of scales stands over the tile's border, share of the drop: neither the scales' tips nor their lowest points
 * come near to a border, where they would leave crumbs at the seat's edge.
 */
const PHASE = 0.3;

export const scale: Motif<typeof scaleMotif> = {
  ...scaleMotif,
  draw({ gap }, { aspect }) {
    const radius = (1 - gap) / 2;
    const drop = aspect / 2;
    const one = ([x, y]: Point2) => ({
      difference: [
        { path: disc([x, y], radius) },
        { path: `${disc([x - 0.5, y + drop], radius + gap)} ${disc([x + 0.5, y + drop], radius + gap)}` },
      ],
    });
    // As many as reach into the tile.
    const middles = [-2, 0, 2].flatMap((row): Point2[] => {
      const y = row * drop + PHASE * drop;
      return [
        [0.5, y],
        [0, y + drop],
        [1, y + drop],
      ];
    });
    return { intersection: [{ path: box(0, 1, -drop, drop) }, { union: middles.map(one) }] };
  },
};
