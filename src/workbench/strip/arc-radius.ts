/**
 * The radius of a path's arcs, by hand: the middle of an arc is taken hold of, and the arc goes through where it is put.
 */
import { curvePoint } from "./path-curves.js";
import { startOf } from "./path-edit.js";
import type { PathText } from "./path-text.js";
import type { ArtPoint } from "./tile-units.js";

/** The middle of an arc. */
export interface ArcNode {
  readonly step: number;
  readonly at: ArtPoint;
  readonly radius: number;
}

/** Of an ellipse's two radii none is meant; the arcs of circles alone are bent, and the strip says so. */
export function arcNodes(path: PathText): ArcNode[] {
  return path.steps.flatMap((own, step): ArcNode[] => {
    const { arc } = own;
    if (own.letter !== "A" || arc === undefined || arc.rx !== arc.ry || arc.rx === 0) return [];
    const HALF = 0.5;
    return [{ step, at: curvePoint(own, startOf(path, step), HALF), radius: arc.rx }];
  });
}

/** Whether a path has arcs of ellipses, whose two radii no handle bends. */
export function hasEllipse({ steps }: PathText): boolean {
  return steps.some(({ letter, arc }) => letter === "A" && arc !== undefined && arc.rx !== arc.ry);
}

/** Rises over a chord's length under which an arc is all but a line: its radius stays below a hundred chords. Chosen. */
const LEAST_RISE = 1 / 800;

/** Decimals of a radius: as points are written. */
const DECIMALS = 4;

/** The path with an arc bent so that its middle comes as near to a place as it can: on the line across its chord's middle. */
export function bendArc(path: PathText, step: number, [x, y]: ArtPoint): PathText {
  const own = path.steps[step];
  const [from, [to]] = [startOf(path, step), own.points];
  if (own.arc === undefined || to === undefined) return path;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(dx, dy);
  if (chord === 0) return path;
  // To the right of its way an arc bulges that turns to the left.
  const across = ((x - (from[0] + to[0]) / 2) * dy - (y - (from[1] + to[1]) / 2) * dx) / chord;
  const rise = Math.max(LEAST_RISE * chord, Math.abs(across));
  const exact = (chord ** 2 / 4 + rise ** 2) / (2 * rise);
  // Rounded up, since a smaller one would not reach from end to end.
  const radius = Math.max(Math.ceil(exact * 10 ** DECIMALS) / 10 ** DECIMALS, chord / 2);
  const arc = { ...own.arc, rx: radius, ry: radius, large: rise > chord / 2, sweep: across >= 0 };
  return { ...path, steps: path.steps.with(step, { ...own, arc, written: undefined }) };
}
