/**
 * A fret: a line along the band from which square hooks turn in on themselves, gaps as wide as the line.
 */
import type { Point2 } from "../../base/math/point.js";
import { fretMotif } from "../../design/motifs/fret.js";
import type { Motif } from "./motif.js";
import { box } from "./outlines.js";

/** Corners of a hook on a grid of the line's width, and how many steps there are from hook to hook. */
const HOOKS: readonly { readonly pitch: number; readonly corners: readonly Point2[] }[] = [
  {
    pitch: 6,
    corners: [
      [0, 0],
      [0, 4],
      [4, 4],
      [4, 2],
      [2, 2],
    ],
  },
  {
    pitch: 8,
    corners: [
      [0, 0],
      [0, 6],
      [6, 6],
      [6, 2],
      [2, 2],
      [2, 4],
      [4, 4],
    ],
  },
];

/** Height of all, share of the tile's. */
const SPAN = 0.9;

export const fret: Motif<typeof fretMotif> = {
  ...fretMotif,
  draw({ hooks, turns }, { aspect }) {
    const { pitch, corners } = HOOKS[turns - 1];
    const high = Math.max(...corners.map(([, y]) => y));
    const [sx, sy] = [1 / (pitch * hooks), (SPAN * aspect) / (high + 1)];
    const bar = (i: number, [ax, ay]: Point2, [bx, by]: Point2) => {
      const [left, right] = [Math.min(ax, bx) - 0.5, Math.max(ax, bx) + 0.5].map((x) => (x + i * pitch + 1) * sx);
      const [low, top] = [Math.min(ay, by) - 0.5, Math.max(ay, by) + 0.5].map((y) => (y - high / 2) * sy);
      return box(left, right, low, top);
    };
    const hook = (i: number) => corners.slice(1).map((corner, k) => bar(i, corners[k], corner));
    const line = bar(0, [-1, 0], [hooks * pitch, 0]);
    return { path: [line, ...Array.from({ length: hooks }, (_, i) => hook(i)).flat()].join(" ") };
  },
};
