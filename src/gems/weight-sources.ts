/** Where the formulas for weight are from. */

/** Of diamonds. */
export const DIAMOND_SOURCE =
  "a1-diamond.com, Formula for calculating the weight; pricescope.com thread 54387; blog.esslinger.com; 3dbook.octonus.com 6_01";

/** Of coloured stones. */
export const COLOURED_SOURCE =
  "talk.jewelry thread 16956; gempulse.com; dendritics.com, standard formula; esslinger.com";
