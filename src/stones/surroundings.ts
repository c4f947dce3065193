/**
 * What lies round a stone where it stands: the surface over it, the bore under it, and how high everything reaches.
 */
import type { Band } from "../band/band.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { type Frame, intoSpace } from "./frame.js";
import type { Around } from "./settings/hollow.js";

export interface SurroundingsOptions {
  readonly band: Band;
  /** How far anything stands above the seat or a rail, mm. */
  readonly standing: number;
  /** How far bodies must reach beyond a surface to intersect truly, mm. */
  readonly clear: number;
}

/** Over a stone's girdle everything is cut away at least this high, mm, and so many of its crown's height beside that (chosen). */
const OVER_STONE = 0.5;
const OVER_CROWNS = 2;

/** Looks round a stone, whose crown is so high, mm. */
export function aroundStone(frame: Frame, crown: number, { band, standing, clear }: SurroundingsOptions): Around {
  const [x, y, w] = frame.at;
  const angle = Math.atan2(y, x);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const way: Point2 = [frame.out[2], frame.out[0] * cos + frame.out[1] * sin];
  const radius = Math.hypot(x, y);
  const { polyline } = band.sectionAt(angle);
  const met = meetings(polyline, [w, radius], way);
  const highest = polyline.reduce((most, [, r]) => Math.max(most, r), 0);
  const over = (highest + standing + clear - radius) / Math.max(way[1], LEAST_FACING);
  return {
    surface: met[met.length - 1] ?? 0,
    bore: met[0] ?? 0,
    above: Math.max(over, OVER_CROWNS * crown + OVER_STONE),
  };
}

/** A stone that leans more than this from the radius, as a cosine, is cut out of the metal only so far (chosen: 75°). */
const LEAST_FACING = 0.26;

/** Where a line meets a closed section, mm from its point, in order. */
function meetings(polyline: readonly Point2[], [pw, pr]: Point2, [dw, dr]: Point2): number[] {
  const found: number[] = [];
  let [aw, ar] = polyline[polyline.length - 1];
  for (const [bw, br] of polyline) {
    const [a, b] = [(aw - pw) * dr - (ar - pr) * dw, (bw - pw) * dr - (br - pr) * dw];
    if (a > 0 !== b > 0) {
      const share = a / (a - b);
      const t = (aw + share * (bw - aw) - pw) * dw + (ar + share * (br - ar) - pr) * dr;
      if (pr + t * dr > 0) found.push(t);
    }
    [aw, ar] = [bw, br];
  }
  return found.sort((one, other) => one - other);
}

/**
 * Height at which walls round a stone begin, in its coordinates: below the surface under all of their outline, but in the outer half
 * of the metal.
 *
 * @param outline of what is raised, in the stone's coordinates
 */
export function footUnder(
  frame: Frame,
  outline: readonly Point2[],
  around: Around,
  { band, clear }: SurroundingsOptions,
): number {
  let lowest = around.surface;
  for (const [x, y] of outline) {
    const point = intoSpace(frame, [x, y, 0]);
    const top = outsideAt(band, point);
    if (top !== undefined) lowest = Math.min(lowest, top - Math.hypot(point[0], point[1]));
  }
  return Math.max(lowest - clear, (around.surface + around.bore) / 2);
}

/** Radius of the band's outside at a point's angle and w; undefined beside the band. */
function outsideAt(band: Band, [x, y, w]: Point3): number | undefined {
  const { polyline } = band.sectionAt(Math.atan2(y, x));
  const met = meetings(polyline, [w, 0], [0, 1]);
  return met.at(-1);
}
