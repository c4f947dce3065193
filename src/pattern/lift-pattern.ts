/**
 * A pattern whose relief stands higher by the same amount everywhere, on upright walls.
 */

import { mapBeadLines } from "../beads/map-bead-lines.js";
import { STAY } from "../flat/motion.js";
import { liftBody } from "../relief/flat-body.js";
import type { Pattern } from "./laid-out.js";

/** The pattern with its relief lifted, and with it the beads that stand on regions; what is cut stays where it is. */
export function liftPattern(pattern: Pattern, by: number): Pattern {
  if (by === 0) return pattern;
  const { bodies, beadLines, height, repeats, holes } = pattern;
  return {
    bodies: bodies.map((body) => (body.mode === "raised" ? liftBody(body, by) : body)),
    beadLines: beadLines.map((run) => (run.height > 0 ? mapBeadLines(run, { places: [STAY], lift: by }) : run)),
    height: bodies.some(({ mode }) => mode === "raised") ? height + by : height,
    repeats,
    holes,
  };
}
