/**
 * A root of a function between two places where its signs differ, by the ITP method: I. F. D. Oliveira and
 * R. H. C. Takahashi, "An Enhancement of the Bisection Method Average Performance Preserving Minmax Optimality",
 * ACM Transactions on Mathematical Software 47(1), 2020. But for rounding it never takes more than one
 * step above bisection's count, and on smooth functions far fewer.
 */

/** A place and the function's value there. */
export interface Sample {
  readonly x: number;
  readonly y: number;
}

/** How far the estimate is pulled towards the middle: κ1 (b − a)^κ2, κ1 = 0.2 / (b − a) at the start (the authors' choice). */
const PULL = 0.2;

/** Steps that ITP may take above bisection's count (the authors' n0). */
const SLACK = 1;

/**
 * Narrows the bracket until it is no wider than `step`, or a root is hit exactly (then both ends are that root).
 *
 * @param low where the value is below 0
 * @param high right of `low`, where the value is 0 or more
 */
export function narrowRoot(
  f: (x: number) => number,
  low: Sample,
  high: Sample,
  step: number,
): readonly [low: Sample, high: Sample] {
  let [a, b] = [low, high];
  if (b.y === 0) return [b, b];
  const pull = PULL / (b.x - a.x);
  const most = Math.max(0, Math.ceil(Math.log2((b.x - a.x) / step))) + SLACK;
  for (let i = 0; b.x - a.x > step; i++) {
    const middle = (a.x + b.x) / 2;
    const reach = step * 2 ** (most - i - 1) - (b.x - a.x) / 2;
    const x = nearMiddle(
      truncate(falsePosition(a, b), middle, Math.max(pull * (b.x - a.x) ** 2, step / 4)),
      middle,
      reach,
    );
    if (x <= a.x || x >= b.x) break;
    const y = f(x);
    if (y === 0)
      return [
        { x, y },
        { x, y },
      ];
    if (y > 0) b = { x, y };
    else a = { x, y };
  }
  return [a, b];
}

/** Where the chord through both ends is 0. */
function falsePosition(a: Sample, b: Sample): number {
  return (b.y * a.x - a.y * b.x) / (b.y - a.y);
}

function truncate(estimate: number, middle: number, pull: number): number {
  return Math.abs(middle - estimate) <= pull ? middle : estimate + Math.sign(middle - estimate) * pull;
}

/** The estimate, no further from the middle than keeps the count of steps. */
function nearMiddle(estimate: number, middle: number, reach: number): number {
  return Math.abs(estimate - middle) <= reach ? estimate : middle - Math.sign(middle - estimate) * reach;
}
