/**
 * Zigzag bars, one above the other.
 */
import { z } from "zod";
import type { Point2 } from "../../base/math/point.js";
import type { Motif } from "./motif.js";
import { polygon, repeat } from "./outlines.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  bars: count("bars across the tile", [1, 3, 2]),
  rise: share("height of each zigzag's middle line, share of the tile's", [0.15, 0.4, 0.3]),
  weight: share("height of a bar, share of the room that each has", [0.46, 0.6, 0.54]),
});

/** Height of all, share of the tile's. */
const SPAN = 0.92;

export const zigzag: Motif<typeof parameters.shape> = {
  name: "zigzag",
  summary: "bars that go up and down, one above the other",
  group: "p2mg",
  aspect: { natural: 1, least: 0.9, most: 1.4 },
  parameters,
  draw({ bars, rise, weight }, { aspect }) {
    const room = ((SPAN - rise) * aspect) / (bars - 1 + weight);
    const [half, swing] = [(weight * room) / 2, (rise * aspect) / 2];
    const line = (y: number): Point2[] => [
      [-0.5, y - swing],
      [0, y + swing],
      [0.5, y - swing],
      [1, y + swing],
      [1.5, y - swing],
    ];
    const bar = (y: number) => polygon([...line(y - half), ...line(y + half).reverse()]);
    return { path: repeat(bars, (i) => bar((i - (bars - 1) / 2) * room)) };
  },
};
