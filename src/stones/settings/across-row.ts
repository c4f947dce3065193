/**
 * A stone seen along its row: how far it reaches across, and how crown and pavilion narrow there.
 */
import type { Point2 } from "../../base/math/point.js";
import type { GirdleShape } from "./girdle-shape.js";
import { ROOM } from "./hollow.js";

export interface AcrossRow {
  /** Half of its width across the row, and of its keel's or culet's, mm. */
  readonly half: number;
  readonly keel: number;
  /** Slopes of its outline as rise over run. */
  readonly pavilion: number;
  readonly crown: number;
  /** Heights at which faces of these slopes, begun one room beside the girdle, keep their room from the stone everywhere; mm. */
  readonly lower: number;
  readonly upper: number;
}

/** Steeper than this no outline is drawn (chosen: 80°). */
const STEEPEST = 5.67;

/**
 * @param way unit vector of the row in the stone's coordinates
 * @param radius of the circle along which the row goes, mm: beside a stone's middle it falls away below the stone. Default straight
 */
export function acrossRow(shape: GirdleShape, [wx, wy]: Point2, radius = Number.POSITIVE_INFINITY): AcrossRow {
  const reach = (points: readonly (readonly [number, number, ...number[]])[]) =>
    points.reduce((most, [x, y]) => Math.max(most, Math.abs(x * wy - y * wx)), 0);
  const half = reach(shape.girdle);
  const keel = reach(shape.keel.map((x): Point2 => [x, 0])) + (shape.culet / 2) * Math.abs(wx);
  const top = Math.max(...shape.corners.map(([, , z]) => z));
  const table = reach(shape.corners.filter(([, , z]) => z > top - ON_TOP));
  const slope = (height: number, run: number) => (height <= 0 ? 0 : Math.min(STEEPEST, height / Math.max(run, 0)));
  const [pavilion, crown] = [slope(shape.pavilion, half - keel), slope(shape.crown, half - table)];
  let [lower, upper] = [-shape.band - ROOM, ROOM];
  for (const corner of shape.corners) {
    const inside = half + ROOM - reach([corner]);
    const z = corner[2];
    // Upright room is the room at right angles to a face, over the cosine of its slope.
    if (z <= 0) lower = Math.min(lower, z + inside * pavilion - ROOM * Math.hypot(1, pavilion));
    const falls = (corner[0] * wx + corner[1] * wy) ** 2 / (2 * radius);
    if (z >= 0) upper = Math.max(upper, z + falls - inside * crown + ROOM * Math.hypot(1, crown));
  }
  return { half, keel, pavilion, crown, lower, upper };
}

/** Corners of the table lie in one plane but for rounding, mm. */
const ON_TOP = 1e-6;
