/**
 * Bricks in courses, each course half a brick on from the next.
 */
import { z } from "zod";
import type { Point2 } from "../../base/math/point.js";
import type { Motif } from "./motif.js";
import { polygon, repeat } from "./outlines.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  courses: evenCount("courses across the tile", [2, 4, 4]),
  joint: share("width of the joints, share of the tile's width", [0.05, 0.1, 0.07]),
  soft: share("roundness of the corners, share of half a brick's height", [0, 0.8, 0.4]),
});

export const brick: Motif<typeof parameters.shape> = {
  name: "brick",
  summary: "bricks in courses, each half a brick on from the next",
  group: "p2mg",
  aspect: { natural: 1, least: 0.7, most: 2 },
  parameters,
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
