/**
 * A stretch of a column that is cut off, piece by piece, by what bounds a body: planes, cones and balls met by a line in closed form.
 */

/** From where to where along the column, mm; empty where it ends before it begins. What bounds a body changes it in place. */
export interface Span {
  from: number;
  to: number;
}

/** A column in a body's own coordinates: place at its origin, mm, and what a mm along it adds. */
export interface Line {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly dx: number;
  readonly dy: number;
  readonly dz: number;
}

/** Leaves of a span what lies inside a bound. */
export type Clip = (line: Line, span: Span) => void;

/** What lies between two heights inside of bounds. */
export interface Piece {
  readonly low: number;
  readonly high: number;
  readonly clips: readonly Clip[];
}

/** Slopes below this are none: rounding. */
const LEVEL = 1e-12;

/** Keeps what has value + slope · t ≤ 0. */
export function keepBelow(span: Span, value: number, slope: number): void {
  if (slope > LEVEL) span.to = Math.min(span.to, -value / slope);
  else if (slope < -LEVEL) span.from = Math.max(span.from, -value / slope);
  else if (value > 0) span.to = Number.NEGATIVE_INFINITY;
}

/** Inside a cone or cylinder about an axis along z at (middle, 0): no farther from it than radius + slope · z. */
export function inCone(middle: number, radius: number, slope: number): Clip {
  return ({ x, y, z, dx, dy, dz }, span) => {
    const [reach, widens] = [radius + slope * z, slope * dz];
    keepBelow(span, -reach, -widens);
    const ax = x - middle;
    keepWithin(
      span,
      dx * dx + dy * dy - widens * widens,
      ax * dx + y * dy - reach * widens,
      ax * ax + y * y - reach * reach,
    );
  };
}

/** Inside a ball about (0, 0, middle). */
export function inBall(middle: number, radius: number): Clip {
  return ({ x, y, z, dx, dy, dz }, span) => {
    const az = z - middle;
    keepWithin(span, dx * dx + dy * dy + dz * dz, x * dx + y * dy + az * dz, x * x + y * y + az * az - radius * radius);
  };
}

/** Below a plane: x · nx + y · ny + z · nz ≤ most. */
export function below(nx: number, ny: number, nz: number, most: number): Clip {
  return ({ x, y, z, dx, dy, dz }, span) =>
    keepBelow(span, nx * x + ny * y + nz * z - most, nx * dx + ny * dy + nz * dz);
}

/** Keeps what has a t² + 2 b t + c ≤ 0 and is convex: with a below 0 the side of a double cone on which it already is. */
function keepWithin(span: Span, a: number, b: number, c: number): void {
  if (Math.abs(a) < LEVEL) {
    keepBelow(span, c, 2 * b);
    return;
  }
  const square = b * b - a * c;
  if (a > 0) {
    if (square <= 0) {
      span.to = Number.NEGATIVE_INFINITY;
      return;
    }
    const root = Math.sqrt(square);
    span.from = Math.max(span.from, (-b - root) / a);
    span.to = Math.min(span.to, (-b + root) / a);
    return;
  }
  if (square <= 0) return;
  const root = Math.sqrt(square);
  // Outside both roots; between them lies the cone's tip, so the span is on one side of it.
  const [low, high] = [(-b + root) / a, (-b - root) / a];
  if (span.from >= low) span.from = Math.max(span.from, high);
  else if (span.to <= high) span.to = Math.min(span.to, low);
}

/** From where to where along a line a piece goes, within a span. */
export function pieceSpan({ low, high, clips }: Piece, line: Line, within: Readonly<Span>, span: Span): void {
  span.from = within.from;
  span.to = within.to;
  keepBelow(span, low - line.z, -line.dz);
  keepBelow(span, line.z - high, line.dz);
  for (const clip of clips) {
    if (span.to <= span.from) return;
    clip(line, span);
  }
}
