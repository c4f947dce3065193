/**
 * Limits on SVG files: far above drawings made for a ring, low enough that a file made to stall is refused at once.
 * All are chosen, not taken from a source; times were measured on 2 shared cores, Node 20.
 */
import { ART_BYTES } from "../../base/art-files.js";
import { AnnuletError } from "../../base/errors.js";

export const SVG_LIMITS = {
  /** Longest text, bytes in a file and characters in memory. */
  text: ART_BYTES.drawing,
  /** Deepest nesting of elements, `use` and clip paths included. */
  depth: 100,
  /** Most elements in the text. */
  elements: 50_000,
  /** Most attributes on one element. */
  attributes: 500,
  /** Most elements drawn, each `use` counted with all that it repeats. */
  drawn: 10_000,
  /** Most characters of path data in all that is drawn. */
  pathText: 1_000_000,
  /** Most lines and curves in all that is drawn. */
  segments: 100_000,
  /** Most corners of flattened outlines. */
  points: 200_000,
  /** Most pairs of edges that may lie near enough to cross. */
  pairs: 500_000,
  /** Most dashes and gaps that a stroke names. */
  dashes: 100,
  /** Most changes from white to black and back in the order of a mask that is followed. */
  maskChanges: 100,
  /** Most rules in style sheets. */
  rules: 500,
  /** Farthest that anything drawn may lie from the tile, mm. */
  reach: 1_000,
} as const;

/** The error for a file that passes a limit. */
export function tooMuch(message: string, allowed: string, where: string): AnnuletError {
  return new AnnuletError({
    code: "svg-too-complex",
    message: `the SVG file ${message}`,
    path: where,
    allowed,
    hint: "draw it more simply: a tile is a few millimetres wide",
  });
}
