/**
 * Points on a path's steps, and steps parted in two.
 */
import { SVGPathData } from "svg-pathdata";
import type { PathStep } from "./path-text.js";
import type { ArtPoint } from "./tile-units.js";

const between = ([ax, ay]: ArtPoint, [bx, by]: ArtPoint, share: number): ArtPoint => [
  ax + share * (bx - ax),
  ay + share * (by - ay),
];

/** de Casteljau: the points of a curve's first and second part, each without the point that it begins at. */
function casteljau(points: readonly ArtPoint[], share: number): readonly [first: ArtPoint[], second: ArtPoint[]] {
  const [first, second]: [ArtPoint[], ArtPoint[]] = [[], []];
  let row = points;
  while (row.length > 1) {
    second.unshift(row[row.length - 1]);
    row = row.slice(1).map((point, i) => between(row[i], point, share));
    first.push(row[0]);
  }
  return [first, second];
}

/** An arc by its centre; undefined for one that is a line. */
interface CentredArc {
  readonly at: (share: number) => ArtPoint;
  readonly rx: number;
  readonly ry: number;
  /** Degrees, signed. */
  readonly span: number;
}

const DEGREE = Math.PI / 180;

function centred({ arc, points: [[x, y]] }: PathStep, from: ArtPoint): CentredArc | undefined {
  if (arc === undefined || arc.rx === 0 || arc.ry === 0) return undefined;
  const [, drawn] = new SVGPathData([
    { type: SVGPathData.MOVE_TO, relative: false, x: from[0], y: from[1] },
    {
      type: SVGPathData.ARC,
      relative: false,
      ...{ rX: arc.rx, rY: arc.ry, xRot: arc.turn, x, y },
      lArcFlag: arc.large ? 1 : 0,
      sweepFlag: arc.sweep ? 1 : 0,
    },
  ]).annotateArcs().commands;
  if (!("rX" in drawn)) return undefined;
  const { rX: rx, rY: ry, cX = 0, cY = 0, phi1 = 0, phi2 = 0 } = drawn;
  const [cos, sin] = [Math.cos(arc.turn * DEGREE), Math.sin(arc.turn * DEGREE)];
  const at = (share: number): ArtPoint => {
    const phi = (phi1 + share * (phi2 - phi1)) * DEGREE;
    const [a, b] = [rx * Math.cos(phi), ry * Math.sin(phi)];
    return [cX + a * cos - b * sin, cY + a * sin + b * cos];
  };
  return { at, rx, ry, span: phi2 - phi1 };
}

/** The point at a share of a step, 0 to 1: of an arc by its angle, of a curve by its parameter. */
export function curvePoint(step: PathStep, from: ArtPoint, share: number): ArtPoint {
  const end = step.points[step.points.length - 1];
  if (step.letter === "A") return centred(step, from)?.at(share) ?? between(from, end, share);
  return casteljau([from, ...step.points], share)[0].at(-1) ?? from;
}

/** A step as two that draw the same. */
export function splitStep(step: PathStep, from: ArtPoint, share: number): PathStep[] {
  const { letter, relative, points, arc } = step;
  const end = points[points.length - 1];
  const round = letter === "A" ? centred(step, from) : undefined;
  if (round !== undefined && arc !== undefined) {
    const HALF_ROUND = 180;
    const part = (to: ArtPoint, of: number): PathStep => ({
      letter,
      relative,
      points: [to],
      arc: { ...arc, rx: round.rx, ry: round.ry, large: Math.abs(round.span) * of > HALF_ROUND },
    });
    return [part(round.at(share), share), part(end, 1 - share)];
  }
  if (letter === "A") {
    return [between(from, end, share), end].map((to): PathStep => ({ letter: "L", relative, points: [to] }));
  }
  const kind = letter === "S" ? "C" : letter === "T" ? "Q" : letter;
  return casteljau([from, ...points], share).map((part): PathStep => ({ letter: kind, relative, points: part }));
}
