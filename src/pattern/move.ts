/**
 * Moves completed patterns to their places on the seat, and puts several together.
 */

import { greatestCommon } from "../base/math/greatest-common.js";
import { mapBeadLines } from "../beads/map-bead-lines.js";
import type { Motion } from "../flat/motion.js";
import { moveBody } from "../relief/flat-body.js";
import type { Pattern } from "./laid-out.js";

/** The pattern in each of several places. */
export function placePattern(pattern: Pattern, places: readonly Motion[]): Pattern {
  return {
    bodies: pattern.bodies.flatMap((body) => places.map((motion) => moveBody(body, motion))),
    beadLines: pattern.beadLines.map((run) => mapBeadLines(run, { places, lift: 0 })),
    height: pattern.height,
    repeats: pattern.repeats,
    holes: pattern.holes * places.length,
  };
}

/** Patterns that lie beside each other, as one. */
export function joinPatterns(patterns: readonly Pattern[]): Pattern {
  return {
    bodies: patterns.flatMap(({ bodies }) => bodies),
    beadLines: patterns.flatMap(({ beadLines }) => beadLines),
    height: Math.max(0, ...patterns.map(({ height }) => height)),
    repeats: patterns.map(({ repeats }) => repeats).reduce(greatestCommon),
    holes: patterns.reduce((sum, { holes }) => sum + holes, 0),
  };
}
