/**
 * Changes of a path by hand: a point or a handle moved, a point added on a line, a point taken away.
 */
import { curvePoint, splitStep } from "./path-curves.js";
import type { PathStep, PathText } from "./path-text.js";
import type { ArtPoint } from "./tile-units.js";

/** A point of a path that can be taken hold of. */
export interface PathNode {
  readonly step: number;
  /** Which of the step's points. */
  readonly point: number;
  /** An end of steps, or what bends one. */
  readonly kind: "end" | "control";
  readonly at: ArtPoint;
}

/** Points nearer than this are one, in the path's unit: as the library takes them. */
const SAME_POINT = 1e-9;

const isSame = ([ax, ay]: ArtPoint, [bx, by]: ArtPoint): boolean => Math.hypot(ax - bx, ay - by) <= SAME_POINT;

/** Every point; of S and T without the control that they take over. */
export function nodesOf({ steps }: PathText): PathNode[] {
  return steps.flatMap(({ letter, points }, step) =>
    points.flatMap((at, point): PathNode[] => {
      const end = point === points.length - 1;
      if (!end && point === 0 && (letter === "S" || letter === "T")) return [];
      return [{ step, point, kind: end ? "end" : "control", at }];
    }),
  );
}

/** A step with other points, to be written anew. */
function changed(step: PathStep, points: readonly ArtPoint[]): PathStep {
  return { ...step, points, written: undefined };
}

function endOf({ points }: PathStep): ArtPoint | undefined {
  return points[points.length - 1];
}

/**
 * The path with a point moved. The handles beside a moved end go along with it, and so does what closes the path there; what a
 * smooth curve takes over from a moved handle follows too. All else stays where it is.
 */
export function movePoint(
  path: PathText,
  { step, point, kind }: Pick<PathNode, "step" | "point" | "kind">,
  to: ArtPoint,
): PathText {
  const own = path.steps[step];
  const from = own.points[point];
  const by: ArtPoint = [to[0] - from[0], to[1] - from[1]];
  const steps = [...path.steps];
  if (kind === "control") {
    steps[step] = changed(own, own.points.with(point, to));
    const next = steps[step + 1];
    const end = endOf(own);
    const smooth = next !== undefined && end !== undefined && followsHandle(own, next, point);
    if (smooth) steps[step + 1] = { ...next, points: next.points.with(0, [2 * end[0] - to[0], 2 * end[1] - to[1]]) };
    return { ...path, steps };
  }
  for (const at of twinsOf(path, step)) moveEnd(steps, at, to, by);
  return { ...path, steps };
}

/** Whether a smooth step takes over a handle of the one before. */
function followsHandle(before: PathStep, next: PathStep, point: number): boolean {
  const pair = next.letter === "S" ? "CS" : next.letter === "T" ? "QT" : "";
  return pair.includes(before.letter) && pair !== "" && point === before.points.length - 2;
}

function moveEnd(steps: PathStep[], at: number, to: ArtPoint, by: ArtPoint): void {
  const shift = ([x, y]: ArtPoint): ArtPoint => [x + by[0], y + by[1]];
  const own = steps[at];
  const bent = own.letter === "C" || own.letter === "S" ? own.points.with(1, shift(own.points[1])) : own.points;
  steps[at] = changed(own, bent.with(bent.length - 1, to));
  const next = steps[at + 1];
  if (next?.letter === "C") steps[at + 1] = changed(next, next.points.with(0, shift(next.points[0])));
  if (next?.letter === "S") steps[at + 1] = { ...next, points: next.points.with(0, shift(next.points[0])) };
}

/** The ends that are one point: itself, and where a path closes on its beginning both of these. */
function twinsOf({ steps }: PathText, step: number): number[] {
  const { first, last, closed } = subpathOf(steps, step);
  const [start, end] = [endOf(steps[first]), endOf(steps[last])];
  const meets = closed && first !== last && start !== undefined && end !== undefined && isSame(start, end);
  return meets && (step === first || step === last) ? [first, last] : [step];
}

interface Subpath {
  /** Its M, its last step with an end, and whether Z follows. */
  readonly first: number;
  readonly last: number;
  readonly closed: boolean;
}

function subpathOf(steps: readonly PathStep[], step: number): Subpath {
  let first = step;
  while (first > 0 && steps[first].letter !== "M" && steps[first - 1].letter !== "Z") first--;
  let last = step;
  while (last + 1 < steps.length && steps[last + 1].letter !== "M" && steps[last + 1].letter !== "Z") last++;
  return { first, last, closed: steps[last + 1]?.letter === "Z" };
}

/** Where a step begins. */
export function startOf({ steps }: PathText, step: number): ArtPoint {
  const before = steps[step - 1];
  if (before === undefined) return [0, 0];
  const end = endOf(before);
  if (end !== undefined) return end;
  // After Z the pen stands where the subpath began.
  for (let at = step - 1; at >= 0; at--) if (steps[at].letter === "M") return endOf(steps[at]) as ArtPoint;
  return [0, 0];
}

/** Where a Z draws its line to; undefined for other steps. */
function closingEnd(path: PathText, step: number): ArtPoint | undefined {
  if (path.steps[step].letter !== "Z") return undefined;
  return endOf(path.steps[subpathOf(path.steps, step - 1).first]);
}

/** The path with a point more on a step, at a share of it, 0 to 1. A closing line becomes two. */
export function addPoint(path: PathText, step: number, share: number): PathText {
  const own = path.steps[step];
  const from = startOf(path, step);
  const closing = closingEnd(path, step);
  const steps = [...path.steps];
  if (closing !== undefined) {
    const at: ArtPoint = [from[0] + share * (closing[0] - from[0]), from[1] + share * (closing[1] - from[1])];
    steps.splice(step, 0, { letter: "L", relative: own.relative, points: [at] });
  } else {
    steps.splice(step, 1, ...splitStep(own, from, share));
  }
  return { ...path, steps };
}

/** The path without the end of a step; undefined where nothing would be left of it. */
export function removePoint(path: PathText, step: number): PathText | undefined {
  const { first, last, closed } = subpathOf(path.steps, step);
  const steps = [...path.steps];
  if (last - first <= 1) {
    steps.splice(first, last - first + (closed ? 2 : 1));
    return steps.some(({ letter }) => letter !== "M" && letter !== "Z") ? { ...path, steps } : undefined;
  }
  const twins = twinsOf(path, step);
  if (step === first || twins.includes(first)) {
    // The next point is where it begins now, and where it closes.
    const start = endOf(steps[first + 1]) as ArtPoint;
    if (twins.length > 1) steps[last] = changed(steps[last], steps[last].points.with(-1, start));
    steps.splice(first, 2, changed(steps[first], [start]));
  } else {
    steps.splice(step, 1);
  }
  return { ...path, steps };
}

/** The place of a path that is nearest to a point. */
export interface NearestPlace {
  readonly step: number;
  readonly share: number;
  /** mm */
  readonly distance: number;
}

/** Places looked at on each step. */
const LOOKS = 32;

/** @param scale mm in the path's unit, along the band and across it */
export function nearestOn(
  path: PathText,
  [x, y]: ArtPoint,
  [sx, sy]: readonly [number, number],
): NearestPlace | undefined {
  let best: NearestPlace | undefined;
  path.steps.forEach((own, step) => {
    if (own.letter === "M") return;
    const from = startOf(path, step);
    const closing = closingEnd(path, step);
    const line: PathStep = closing === undefined ? own : { letter: "L", relative: false, points: [closing] };
    for (let i = 0; i <= LOOKS; i++) {
      const share = i / LOOKS;
      const at = curvePoint(line, from, share);
      const distance = Math.hypot((at[0] - x) * sx, (at[1] - y) * sy);
      if (best === undefined || distance < best.distance) best = { step, share, distance };
    }
  });
  return best;
}
