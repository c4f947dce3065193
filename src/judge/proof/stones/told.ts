/**
 * What the proof knows of settings: their published and chosen sizes, told here anew, since nothing here may rest on the code
 * that makes them. All in mm.
 */

import type { CutName, Stone } from "../../../gems/stone.js";

/** Room between a stone and its hollow on each side: melee 0.1 to 0.2 mm in all (apexjewelrycasting.com). */
export const ROOM = 0.05;

/** A blind pilot ends so far below the culet, but half way to the bore at most. */
export const BELOW_CULET = 0.1;

/** A grain stands so far off the hollow; its post is this share of its radius high, under a dome. */
export const OFF_HOLLOW = 0.02;
export const POST_SHARE = 0.6;

/** Posts nearer to each other than so many radii are one, or have no room. */
export const POSTS_APART = 2.1;

/** Hollows that leave less than this between them are linked. */
export const LEAST_LEAF = 0.1;

/** Radius of a bezel's outer edge, and its share of the wall at most. */
export const EDGE_RADIUS = 0.125;
export const EDGE_SHARE = 1 / 3;

/** Prongs: least width, share of the stone's; what their collar reaches beyond their axis, and beside the hollow; how far below the girdle it ends. */
export const LEAST_PRONG = 0.6;
export const PRONG_SHARE = 0.2;
export const COLLAR_SHARE = 0.85;
export const LEAST_COLLAR = 0.2;
export const COLLAR_BELOW = 0.25;

/** A broken edge of raised channel walls, and its share of the wall at most. */
export const BROKEN = 0.1;

/** Beads nearer to a hollow are left out. */
export const BEADS_NEAR = 0.02;

/**
 * How far a cone over the crown that keeps its room may lie above one that touches the girdle, shares of the width, since facets bulge
 * beyond that (measured over all cuts at their usual proportions: at most so much less a tenth).
 */
const CROWN_OPEN: Readonly<Record<CutName, number>> = {
  round: 0.026,
  oval: 0.037,
  marquise: 0.052,
  pear: 0.056,
  princess: 0.028,
  "square-step": 0.028,
  emerald: 0.044,
  baguette: 0.072,
  "tapered-baguette": 0.093,
  cabochon: 0.18,
};

/** The same in mm. */
export function crownOpen({ cut, width }: Stone): number {
  return CROWN_OPEN[cut] * width;
}

/** A tapered baguette's slanted sides are no planes: its bearing lies lower than their cone by up to so much of its width (measured). */
const SLANTED = 0.2;

/** How far a bearing may lie below its cone's told height, mm. */
export function bearingOpen({ cut, width }: Stone): number {
  return cut === "tapered-baguette" ? SLANTED * width : 0;
}
