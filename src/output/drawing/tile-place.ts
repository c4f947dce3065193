/**
 * Where flat points of a span of tiles lie on the sheet: as drawn, or as worn.
 */

import type { Point2 } from "../../base/math/point.js";
import type { DrawnTile } from "./drawn-tile.js";
import type { TileFrame } from "./symmetry-marks.js";

export interface TilePlace {
  /** A flat line in (u, v) on the sheet; where rows stretch, with points enough to be smooth. */
  readonly trace: (line: readonly Point2[]) => readonly Point2[];
  readonly frame: TileFrame;
  /** mm on paper over mm. */
  readonly scale: number;
  /** The box round the tiles on the sheet, y down. */
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly width: number;
  readonly height: number;
}

/** Longest span of a line that is drawn straight where rows stretch, mm. */
const STEP = 0.1;

/**
 * @param middle where the tiles' middle lies on the sheet
 * @param scale mm on paper over mm
 */
export function tilePlace(tile: DrawnTile, asWorn: boolean, [mx, my]: Point2, scale = 1): TilePlace {
  const { fit, tiles, seatLength } = tile;
  const half = (tiles * fit.tileWidth) / 2;
  const develop = asWorn ? tile.top.develop : (u: number, v: number): Point2 => [u, v];
  const put = ([u, v]: Point2): Point2 => {
    const [x, y] = develop(u - half, v);
    return [mx + scale * x, my - scale * y];
  };
  const trace = (line: readonly Point2[]) => (asWorn ? subdivide(line) : line).map(put);
  const frame = { scale, tiles, rows: fit.rows, tileWidth: fit.tileWidth, tileHeight: fit.tileHeight, trace };
  const sides = [0, 2 * half].flatMap((u) =>
    trace([
      [u, -seatLength / 2],
      [u, seatLength / 2],
    ]),
  );
  const [xs, ys] = [sides.map(([x]) => x), sides.map(([, y]) => y)];
  const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  return { trace, frame, scale, box, width: box.right - box.left, height: box.bottom - box.top };
}

function subdivide(line: readonly Point2[]): Point2[] {
  return line.flatMap((to, i): Point2[] => {
    if (i === 0) return [to];
    const from = line[i - 1];
    const count = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / STEP));
    return Array.from({ length: count }, (_, k): Point2 => {
      const t = (k + 1) / count;
      return [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
    });
  });
}
