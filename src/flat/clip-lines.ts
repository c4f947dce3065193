/**
 * Clips lines to a span of the strip, for patterns that stop.
 */
import type { Chain } from "./chains.js";
import type { GridPath, GridPoint } from "./grid.js";

/** The spans of lines between two x, grid steps. A loop that is cut becomes open lines; what only touches is left out. */
export function clipLines(chains: readonly Chain[], low: number, high: number): Chain[] {
  const inside = ({ x }: GridPoint) => x >= low && x <= high;
  return chains.flatMap((chain) => {
    if (chain.points.every(inside)) return liesOnEnd(chain.points, low, high) ? [] : [chain];
    const first = chain.closed ? chain.points.findIndex((point) => !inside(point)) : 0;
    const path = chain.closed ? [...chain.points.slice(first), ...chain.points.slice(0, first + 1)] : chain.points;
    return cutLine(path, low, high).map((points): Chain => ({ points, closed: false }));
  });
}

function cutLine(path: GridPath, low: number, high: number): GridPath[] {
  const pieces: GridPath[] = [];
  let piece: GridPath = [];
  const finish = () => {
    if (piece.length > 1 && !liesOnEnd(piece, low, high)) pieces.push(piece);
    piece = [];
  };
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i], path[i + 1]];
    const at = (x: number) => ({ x, y: Math.round(a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)) });
    const clamp = (point: GridPoint) => (point.x < low ? at(low) : point.x > high ? at(high) : point);
    if (Math.max(a.x, b.x) < low || Math.min(a.x, b.x) > high) continue;
    if (piece.length === 0) piece.push(clamp(a));
    piece.push(clamp(b));
    if (b.x < low || b.x > high) finish();
  }
  finish();
  return pieces;
}

/** Whether the path lies on one end alone: what touches the end from outside, or runs along it, carries nothing. */
function liesOnEnd(path: GridPath, low: number, high: number): boolean {
  return path.every(({ x }) => x === low) || path.every(({ x }) => x === high);
}
