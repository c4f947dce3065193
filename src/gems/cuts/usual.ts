/**
 * The usual proportions of brilliants, and Tolkowsky's.
 */
import { crownHeightAt, pavilionDepthAt } from "../angles.js";
import { BRILLIANT_REACH } from "../brilliant.js";
import type { Proportions } from "../stone.js";

/**
 * Chosen, so that there is a 58th facet and the depth stays what is published to a tenth of a percent: a point to the eye.
 */
const SMALLEST_CULET = 0.001;

/** Girdle, star and lower half: the laboratories' default (diamondcut.gia.edu, charts). */
const GIRDLE = 0.03;

/** Degrees: of Tolkowsky, and within what the trade calls ideal. */
const CROWN_ANGLE = 34.5;
const PAVILION_ANGLE = 40.75;

function withTable(table: number): Proportions {
  return {
    table,
    crownHeight: crownHeightAt(CROWN_ANGLE, table),
    girdle: GIRDLE,
    pavilionDepth: pavilionDepthAt(PAVILION_ANGLE, SMALLEST_CULET),
    culet: SMALLEST_CULET,
    ...BRILLIANT_REACH,
  };
}

/** Within what the trade calls ideal. */
export const BRILLIANT_USUAL: Proportions = withTable(0.56);

export const BRILLIANT_USUAL_SOURCE =
  "thediamondclub.com.au, Ideal proportions (table, angles); diamondcut.gia.edu, charts (girdle, star, lower half); culet chosen";

/**
 * M. Tolkowsky's: table 53 %, crown 34.5°, pavilion 40.75° (3dbook.octonus.com, Round brilliant proportions; gemfrance.co.uk),
 * with the laboratories' girdle of 3 %. His own girdle of 0.7 % leaves none between flat halves, which take 1.7 %.
 */
export const TOLKOWSKY: Proportions = withTable(0.53);
