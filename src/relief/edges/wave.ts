/** A wave: out = d (1 − cos 2πx / w) / 2, without a corner. Its curvature is at most 2 π² d / w². */
import type { Point2 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import type { EdgeForm } from "./edge-form.js";

export const waveEdge: EdgeForm = {
  draw({ width, depth, tolerance }) {
    // A chord over a share 1/n of the width is off by curvature · (w / n)² / 8; an even number has one at the crest.
    const half = Math.max(2, Math.ceil(Math.sqrt((TURN * TURN * depth) / (16 * tolerance)) / 2));
    return Array.from({ length: 2 * half + 1 }, (_, i): Point2 => {
      const share = i / (2 * half);
      return [width * share, i === 0 || i === 2 * half ? 0 : (depth * (1 - Math.cos(TURN * share))) / 2];
    });
  },
  deepest: (width) => width,
};
