/**
 * A surface whose line changes round the finger.
 *
 * θ = θ0 + u / R as on a surface of revolution, and h along the line's own normal in the half plane of θ. The surface's
 * normal leans out of that plane by the angle whose tangent is (r′ n_r + w′ n_w) / r, primes being slopes by θ: 3° at most
 * where a band tapers from 8 to 4 mm and from 2.2 to 1.6. What stands on it is lower by one less the cosine of that: 0.15 %,
 * under a micrometre on 0.5 mm, which keeps every point in its half plane, and with that all mirrors, true.
 */
import type { Segment } from "../../base/math/curve.js";
import type { Point3 } from "../../base/math/point.js";
import { remembered } from "../../base/math/remembered.js";
import { TURN } from "../../base/units.js";
import { layPieces, makeLine } from "./line.js";
import { type NarrowedLine, narrowedLine } from "./narrowed-line.js";
import type { BandSurface } from "./surface.js";

export interface TaperedOptions {
  /** The line at θ, radians, in (w, r), mm; at all angles as many curves of the same kinds. */
  readonly chainAt: (angle: number) => readonly Segment[];
  /** θ at which lengths across are true to the flat pattern, radians. */
  readonly trueAt: number;
  /** Whether lengths across are true at every other θ too. Default no: they narrow with the line. */
  readonly keeps?: boolean;
  /** mm, above 0. */
  readonly referenceRadius: number;
  /** Radians. */
  readonly startAngle: number;
}

/** Lines that are kept. */
const KEPT = 4096;

/** The step by which slopes round the finger are taken, radians: their error is its square. */
const STEP = 1e-4;

/** The surface of a line that changes. */
export function taperedSurface({
  chainAt,
  trueAt,
  keeps = false,
  referenceRadius,
  startAngle,
}: TaperedOptions): BandSurface {
  const flat = layPieces(chainAt(trueAt));
  const lineAt = remembered(KEPT, (angle: number): NarrowedLine => {
    return keeps ? { ...makeLine(chainAt(angle)), acrossAt: () => 1 } : narrowedLine(flat, chainAt(angle));
  });
  const angleAt = (u: number) => startAngle + u / referenceRadius;
  /** The place at v and h, and its slopes by θ, in (w, r). */
  const slopesAt = (angle: number, v: number, h: number) => {
    const [[w0, r0], [w1, r1]] = [lineAt(angle - STEP).point(v, h), lineAt(angle + STEP).point(v, h)];
    return [(w1 - w0) / (2 * STEP), (r1 - r0) / (2 * STEP)] as const;
  };
  return {
    referenceRadius,
    round: TURN * referenceRadius,
    startAngle,
    seatLength: lineAt(trueAt).length,
    revolved: false,
    keeps,
    angleAt,
    uAt: (angle) => (angle - startAngle) * referenceRadius,
    lineAt,
    forward: (u, v, h): Point3 => {
      const angle = angleAt(u);
      const [w, r] = lineAt(angle).point(v, h);
      return [r * Math.cos(angle), r * Math.sin(angle), w];
    },
    inverse: (x, y, z): Point3 => {
      const angle = Math.atan2(y, x);
      const turned = (angle - startAngle) % TURN;
      const [v, h] = lineAt(angle).inverse(z, Math.hypot(x, y));
      return [(turned < 0 ? turned + TURN : turned) * referenceRadius, v, h];
    },
    normal: (u, v): Point3 => {
      const angle = angleAt(u);
      const line = lineAt(angle);
      const [, r] = line.point(v, 0);
      const [nw, nr] = line.normal(v);
      const [sw, sr] = slopesAt(angle, v, 0);
      const lean = (sr * nr + sw * nw) / r;
      const length = Math.hypot(1, lean);
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      return [(nr * cos + lean * sin) / length, (nr * sin - lean * cos) / length, nw / length];
    },
    stretchAt: (u, v, h) => {
      const angle = angleAt(u);
      const line = lineAt(angle);
      const [, r] = line.point(v, h);
      return { along: Math.hypot(r, ...slopesAt(angle, v, h)) / referenceRadius, across: line.acrossAt(v) };
    },
  };
}
