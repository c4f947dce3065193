/**
 * How steep a curved section is at each distance inside its outline: of the smooth curve that its chords stand for. A curve
 * cut into even chords is, where two meet, as steep as their mean (exact on a circle).
 */

/** One chord of a section, in mm and radians. */
export interface Chord {
  readonly from: number;
  readonly to: number;
  readonly heights: readonly [number, number];
  /** How steep it is at its two ends. */
  readonly steepness: readonly [number, number];
}

/** Chords that turn by more meet in an edge, radians: 40°, as much as no chord of a rounded edge leans. */
const EDGE = (40 * Math.PI) / 180;

/** @param points distance inside the outline and height, mm, the distances ascending */
export function chordsOf(points: readonly Knot[]): Chord[] {
  const knots = withoutPointsOnChords(points);
  const angles = knots.slice(1).map(([d, h], i) => Math.atan2(h - knots[i][1], d - knots[i][0]));
  const smooth = (i: number) => i > 0 && i < angles.length && Math.abs(angles[i] - angles[i - 1]) < EDGE;
  // Where a curve begins or ends it is half a turn steeper or flatter than its chord.
  const turn = (i: number) => (smooth(i) ? (angles[i] - angles[i - 1]) / 2 : 0);
  return angles.map((angle, i) => ({
    from: knots[i][0],
    to: knots[i + 1][0],
    heights: [knots[i][1], knots[i + 1][1]],
    steepness: [angle - (smooth(i) ? turn(i) : turn(i + 1)), angle + (smooth(i + 1) ? turn(i + 1) : turn(i))],
  }));
}

type Knot = readonly [distance: number, height: number];

/** A contour this near to a chord was put in between its ends, mm: two chords of a curve stand farther off. Chosen. */
const ON_CHORD = 1e-3;

function withoutPointsOnChords(points: readonly Knot[]): Knot[] {
  const kept: Knot[] = [];
  points.forEach(([d, h], i) => {
    const [before, after] = [kept.at(-1), points[i + 1]];
    if (before !== undefined && after !== undefined) {
      const [du, dh] = [after[0] - before[0], after[1] - before[1]];
      const off = Math.abs((d - before[0]) * dh - (h - before[1]) * du) / Math.hypot(du, dh);
      if (off < ON_CHORD) return;
    }
    kept.push([d, h]);
  });
  return kept;
}
