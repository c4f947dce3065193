import { describe, expect, test } from "vitest";
import { seeded } from "../../../../src/base/math/seeded.js";
import {
  below,
  type Clip,
  inBall,
  inCone,
  type Line,
  type Piece,
  pieceSpan,
  type Span,
} from "../../../../src/judge/proof/stones/span.js";

/** Held against places along a line, asked one by one. */
function asked({ low, high }: Piece, isIn: (x: number, y: number, z: number) => boolean, line: Line): boolean[] {
  return PLACES.map((t) => {
    const [x, y, z] = [line.x + t * line.dx, line.y + t * line.dy, line.z + t * line.dz];
    return z >= low && z <= high && isIn(x, y, z);
  });
}

const PLACES = Array.from({ length: 401 }, (_, i) => -4 + (8 * i) / 400);

const cone = (middle: number, radius: number, slope: number) =>
  [
    inCone(middle, radius, slope),
    (x: number, y: number, z: number) => Math.hypot(x - middle, y) <= radius + slope * z,
  ] as const;

const bounds: readonly (readonly [string, readonly [Clip, (x: number, y: number, z: number) => boolean]])[] = [
  ["a cylinder beside the middle", cone(0.3, 0.8, 0)],
  ["a cone that widens upwards", cone(0, 0.7, 1.1)],
  ["a cone that narrows upwards", cone(0, 0.7, -0.6)],
  ["a cone whose tip lies in its height", cone(0, 0.2, 0.9)],
  ["a ball", [inBall(0.2, 0.9), (x, y, z) => Math.hypot(x, y, z - 0.2) <= 0.9]],
  ["a plane", [below(0.6, 0, -0.8, 0.1), (x, _, z) => 0.6 * x - 0.8 * z <= 0.1]],
];

describe("a line through a bound", () => {
  test.each(bounds)("%s", (_, [clip, isIn]) => {
    const piece: Piece = { low: -1, high: 1.2, clips: [clip] };
    const span: Span = { from: 0, to: 0 };
    let met = 0;
    for (let i = 0; i < 300; i++) {
      // Most lines lie nearly along the axis, as columns do; some lie exactly along it, some straight across.
      const random = (channel: number) => seeded(14, i, channel);
      const lean = i % 10 === 0 ? 0 : i % 10 === 1 ? 1e9 : 1.5 * random(0);
      const turn = 2 * Math.PI * random(1);
      const size = Math.hypot(lean, 1);
      const [x, y, z] = [2, 3, 4].map((channel) => 2 * random(channel) - 1);
      const way = {
        dx: (lean * Math.cos(turn)) / size,
        dy: (lean * Math.sin(turn)) / size,
        dz: (i % 2 ? 1 : -1) / size,
      };
      const line: Line = { x, y, z, ...way };
      pieceSpan(piece, line, { from: -4, to: 4 }, span);
      const found = PLACES.map((t) => t >= span.from && t <= span.to);
      const wanted = asked(piece, isIn, line);
      const off = found.filter((is, k) => is !== wanted[k]).length;
      expect({ i, off }).toEqual({ i, off: 0 });
      if (wanted.includes(true)) met++;
    }
    expect(met).toBeGreaterThan(60);
  });
});
