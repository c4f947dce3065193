/**
 * A vine: a stem that winds along the band, a leaf in each of its bends.
 *
 * The stem is made of arcs. One that rises by `top` over a quarter of the tile turns by φ with tan(φ/2) = top / ¼, and
 * its radius is ¼ / sin φ.
 */
import type { Point2 } from "../../base/math/point.js";
import { radians } from "../../base/units.js";
import { leafVineMotif } from "../../design/motifs/leaf-vine.js";
import type { Motif } from "./motif.js";
import { around, petal } from "./outlines.js";

/** Leaves: length and width, share of the stem's height; more pointed at the end than at the foot. */
const LEAF = { length: 1.2, width: 0.34 } as const;
const TIPS = [0.6, 1.2] as const;

export const leafVine: Motif<typeof leafVineMotif> = {
  ...leafVineMotif,
  draw({ swing, stem, lean }, { aspect }) {
    const [top, half] = [(swing * aspect) / 2, stem / 2];
    const turn = 2 * Math.atan(4 * top);
    const radius = 1 / (4 * Math.sin(turn));
    const bend = (up: 1 | -1, x: number, side: number): Point2 =>
      around([x, up * (top - radius)], (up * Math.PI) / 2, radius + up * side);
    const between = (x: number, up: 1 | -1, side: number): Point2 => {
      return [x - side * Math.sin(turn) * up, side * Math.cos(turn)];
    };
    const arc = ([x, y]: Point2, side: number, sweep: 0 | 1) =>
      `A ${radius + side} ${radius + side} 0 0 ${sweep} ${x} ${y}`;
    // Along the lower edge to the right, where troughs are wider than crests, and back along the upper one.
    const edge = [
      arc(between(0.25, 1, -half), half, 1),
      arc(bend(1, 0.5, -half), -half, 0),
      arc(between(0.75, -1, -half), -half, 0),
      arc(bend(-1, 1, -half), half, 1),
    ];
    const back = [
      arc(between(0.75, -1, half), -half, 0),
      arc(bend(1, 0.5, half), half, 1),
      arc(between(0.25, 1, half), half, 1),
      arc(bend(-1, 0, half), -half, 0),
    ];
    const [start, end] = [bend(-1, 0, -half), bend(-1, 1, half)];
    const winding = `M ${start[0]} ${start[1]} ${edge.join(" ")} L ${end[0]} ${end[1]} ${back.join(" ")} Z`;
    const leaf = (x: number, up: 1 | -1) => {
      // From the far edge of the stem, so that it leaves it with some width.
      const foot = [x, -up * (top + half)] as const;
      return petal(foot, around(foot, up * radians(lean), 2 * LEAF.length * top + half), 2 * LEAF.width * top, TIPS);
    };
    return { path: `${winding} ${leaf(0, 1)} ${leaf(0.5, -1)}` };
  },
};
