/**
 * Bricks in courses, each course half a brick on from the next.
 */
import type { Point2 } from "../../base/math/point.js";
import { brickMotif } from "../../design/motifs/brick.js";
import type { Motif } from "./motif.js";
import { polygon, repeat } from "./outlines.js";

export const brick: Motif<typeof brickMotif> = {
  ...brickMotif,
  draw({ courses, joint, soft }, { aspect }) {
    const high = aspect / courses;
    const [a, b] = [(1 - joint) / 2, (high - joint) / 2];
    const one = ([x, y]: Point2) =>
      polygon(
        [
          [x - a, y - b],
          [x + a, y - b],
          [x + a, y + b],
          [x - a, y + b],
        ],
        soft,
      );
    return { path: repeat(courses, (j) => one([(j % 2) / 2, (j - (courses - 1) / 2) * high])) };
  },
};
