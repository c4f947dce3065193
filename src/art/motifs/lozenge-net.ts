/**
 * A net of crossing bars: what lozenges in half drop leave between them.
 *
 * Lozenges of half diagonals a and b have their sides a·b / √(a² + b²) from the middle; shrunk by a share k, they leave
 * bars twice that distance times k wide.
 */
import { z } from "zod";
import type { Point2 } from "../../base/math/point.js";
import type { Motif } from "./motif.js";
import { box, polygon, repeat } from "./outlines.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  meshes: count("lozenges along the tile", [1, 2, 1]),
  bar: share("width of the bars, share of the tile's width", [0.085, 0.14, 0.1]),
  soft: share("roundness of the openings' corners, share of half a side", [0, 0.8, 0.3]),
});

export const lozengeNet: Motif<typeof parameters.shape> = {
  name: "lozenge-net",
  summary: "bars that cross aslant, their lozenge openings sharp or round",
  group: "p2mm",
  aspect: { natural: 1, least: 0.7, most: 1.3 },
  parameters,
  draw({ meshes, bar, soft }, { aspect }) {
    const [a, b] = [1 / (2 * meshes), aspect / 2];
    const left = 1 - (bar * Math.hypot(a, b)) / (2 * a * b);
    const opening = ([x, y]: Point2) =>
      polygon(
        [
          [x + left * a, y],
          [x, y + left * b],
          [x - left * a, y],
          [x, y - left * b],
        ],
        soft,
      );
    const inner = repeat(meshes, (i) => opening([(2 * i + 1) * a, 0]));
    const outer = repeat(meshes + 1, (i) => `${opening([2 * i * a, b])} ${opening([2 * i * a, -b])}`);
    return { difference: [{ path: box(0, 1, -b, b) }, { path: `${inner} ${outer}` }] };
  },
};
