/**
 * A surface of revolution: one line turned once round the finger axis.
 */
import type { Segment } from "../../base/math/curve.js";
import type { Point3 } from "../../base/math/point.js";
import { A_NUMBER, numberAbove0, requireOptions } from "../../base/options.js";
import { TURN } from "../../base/units.js";
import { makeLine } from "./line.js";
import type { BandSurface } from "./surface.js";

/** What a surface of revolution is made from. */
export interface RevolvedOptions {
  /** The exact line in (w, r), mm: a seat's from low w to high w. */
  readonly line: readonly Segment[];
  /** mm, above 0. */
  readonly referenceRadius: number;
  /** Radians. */
  readonly startAngle: number;
}

const RULES = {
  line: {
    holds: (value: unknown) => Array.isArray(value) && value.length > 0,
    allowed: "lines and arcs in (w, r), at least one",
    needed: true,
  },
  referenceRadius: { ...numberAbove0("mm"), needed: true },
  startAngle: { ...A_NUMBER, needed: true },
};

/**
 * The surface of a line that is the same all round: the map between flat art (u, v, h) and space, with its inverse. Lengths in
 * mm, angles in radians.
 *
 * @throws AnnuletError `option-invalid`, `option-missing`, `option-unknown`
 *
 * @example
 * const surface = revolvedSurface({
 *   line: [{ kind: "line", from: [-3, 10], to: [3, 10] }], // (w, r), mm
 *   referenceRadius: 10,
 *   startAngle: Math.PI / 2,
 * });
 * const [x, y, z] = surface.forward(5, 1, 0.2); // 5 mm along, 1 mm across, 0.2 mm above
 */
export function revolvedSurface(options: RevolvedOptions): BandSurface {
  requireOptions(options, RULES);
  const { line: chain, referenceRadius, startAngle } = options;
  const line = makeLine(chain);
  const angleAt = (u: number) => startAngle + u / referenceRadius;
  const lineAt = () => line;
  const forward = (u: number, v: number, h: number): Point3 => {
    const [w, r] = line.point(v, h);
    const angle = angleAt(u);
    return [r * Math.cos(angle), r * Math.sin(angle), w];
  };
  const inverse = (x: number, y: number, z: number): Point3 => {
    const turned = (Math.atan2(y, x) - startAngle) % TURN;
    const [v, h] = line.inverse(z, Math.hypot(x, y));
    return [(turned < 0 ? turned + TURN : turned) * referenceRadius, v, h];
  };
  return {
    referenceRadius,
    round: TURN * referenceRadius,
    startAngle,
    seatLength: line.length,
    revolved: true,
    keeps: true,
    angleAt,
    uAt: (angle) => (angle - startAngle) * referenceRadius,
    lineAt,
    forward,
    inverse,
    normal: (u, v) => {
      const [nw, nr] = line.normal(v);
      const angle = angleAt(u);
      return [nr * Math.cos(angle), nr * Math.sin(angle), nw];
    },
    stretchAt: (_u, v, h) => ({ along: line.point(v, h)[1] / referenceRadius, across: 1 }),
  };
}
