/**
 * Limits of the model: below them a shape stops being one that can be meshed and patterned. They are not casting rules;
 * those are checked on the finished ring.
 */

/** Least metal between bore and outside, measured along the radius, mm. A modelling limit, chosen. */
export const LEAST_WALL = 0.1;

/** Least length of the seat along the cross-section, mm: its two ends must stay two points. A modelling limit, chosen. */
export const LEAST_SEAT = 0.01;

/** Least tolerance, mm: a nanometre, under which nothing is made and polylines grow without use. Chosen. */
export const LEAST_TOLERANCE = 1e-6;

/** Points nearer than this are one, mm: rounding. */
export const SAME_POINT = 1e-9;
