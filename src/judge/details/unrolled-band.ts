/**
 * The whole band laid flat: the outlines of all that is raised, sunk and pierced.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Pattern } from "../../pattern/laid-out.js";
import { type FlatRings, tileOutlines } from "../../relief/tile-outlines.js";

/** The band laid flat, with what stands on it. */
export interface UnrolledBand {
  /** Length at the reference radius, and of the seat across, mm. */
  readonly around: number;
  readonly seatLength: number;
  /** Degrees on the ring where u = 0 lies. */
  readonly start: number;
  readonly raised: readonly FlatRings[];
  readonly cut: readonly FlatRings[];
}

/** Lays the pattern out over the whole band, u from 0. */
export function unrollBand(
  { bodies }: Pattern,
  { around, seatLength, start }: Pick<UnrolledBand, "around" | "seatLength" | "start">,
): UnrolledBand {
  const whole = { tileWidth: around, seatLength, tiles: 1, origin: [0, 0] as Point2 };
  const outlines = (shape: Parameters<typeof tileOutlines>[0]) =>
    tileOutlines(shape.seam === undefined && shape.period === undefined ? { ...shape, period: around } : shape, whole);
  return {
    around,
    seatLength,
    start,
    raised: bodies.filter(({ mode }) => mode === "raised").map(outlines),
    cut: bodies.filter(({ mode }) => mode !== "raised").map(outlines),
  };
}
