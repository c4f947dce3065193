/**
 * A net of crossing bars: what lozenges in half drop leave between them.
 *
 * Lozenges of half diagonals a and b have their sides a·b / √(a² + b²) from the middle; shrunk by a share k, they leave
 * bars twice that distance times k wide.
 */
import type { Point2 } from "../../base/math/point.js";
import { lozengeNetMotif } from "../../design/motifs/lozenge-net.js";
import type { Motif } from "./motif.js";
import { box, polygon, repeat } from "./outlines.js";

export const lozengeNet: Motif<typeof lozengeNetMotif> = {
  ...lozengeNetMotif,
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
