/**
 * Moves and lifts the lines of a bead run, with everything about them that has a place.
 */
import type { Point2 } from "../base/math/point.js";
import { type Motion, movedAcross, movedAlong } from "../flat/motion.js";
import type { RunLine } from "../flat/runs.js";
import type { BeadLines } from "./bead-lines.js";

/** What becomes of a run's lines. */
export interface BeadLinesMap {
  /** Each line goes to every one of these places. */
  readonly places: readonly Motion[];
  /** mm by which the surface that carries the beads goes up. */
  readonly lift: number;
}

/** A run moved and lifted. All keys are named, so that a new field does not compile before it says here how it moves. */
export function mapBeadLines(run: BeadLines, { places, lift }: BeadLinesMap): BeadLines {
  return {
    run: run.run,
    path: run.path,
    lines: run.lines.flatMap((line) => places.map((motion) => mapLine(line, motion))),
    copies: run.copies,
    bead: run.bead,
    height: run.height + lift,
  };
}

function mapLine({ points, kind, even, reverses }: RunLine, motion: Motion): RunLine {
  return {
    points: points.map(([u, v]): Point2 => [movedAlong(u, motion), movedAcross(v, motion)]),
    kind,
    even,
    ...(reverses === undefined ? {} : { reverses }),
  };
}
