/**
 * What a form of edge gives: the line of one of its lobes.
 */
import type { Point2 } from "../../base/math/point.js";

export interface LobeFrame {
  /** mm along the outline that one lobe takes. */
  readonly width: number;
  /** mm by which it stands out. */
  readonly depth: number;
  /** Largest distance of the line's chords from its curves, mm. */
  readonly tolerance: number;
}

/**
 * A lobe as points (along, out), mm: from (0, 0) to (width, 0), nowhere back along the outline, `out` from 0 to the depth,
 * the same from either end.
 */
export interface EdgeForm {
  readonly draw: (frame: LobeFrame) => readonly Point2[];
  /** Largest depth of a lobe so wide, mm. */
  readonly deepest: (width: number) => number;
}
