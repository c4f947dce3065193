/**
 * Whether a bead stands in a wall beside the place that carries it: in a rail, or in what else rises from the seat there.
 */
import type { Point2 } from "../base/math/point.js";

/** A bead in the cross-section. */
export interface SectionBead {
  /** Foot on the carrying line, (w, r), mm, and the outward unit normal there. */
  readonly foot: Point2;
  readonly outward: Point2;
  /** Of its centre over the foot, mm. */
  readonly rise: number;
  /** mm */
  readonly radius: number;
}

/** What rises less than this share of the bead's radius over its foot is the carrying surface's own curve (chosen). */
const CURVED = 0.25;

/** Points along a side of the section that are looked at for each radius (chosen). */
const LOOKS = 8;

/**
 * The share of the bead's radius by which the section reaches into it beside its foot: 0 where it does not.
 *
 * @param outline the band's cross-section, closed, (w, r), mm
 */
export function inWall(outline: readonly Point2[], { foot, outward, rise, radius }: SectionBead): number {
  const centre: Point2 = [foot[0] + rise * outward[0], foot[1] + rise * outward[1]];
  let deepest = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length];
    const count = Math.ceil((LOOKS * Math.hypot(b[0] - a[0], b[1] - a[1])) / radius);
    for (let k = 0; k < count; k++) {
      const [w, r] = [a[0] + ((b[0] - a[0]) * k) / count, a[1] + ((b[1] - a[1]) * k) / count];
      const over = (w - foot[0]) * outward[0] + (r - foot[1]) * outward[1];
      const away = Math.hypot(w - centre[0], r - centre[1]);
      if (over > CURVED * radius) deepest = Math.max(deepest, 1 - away / radius);
    }
  });
  return deepest;
}
