/**
 * Limits of the model: below them a shape stops being one that can be meshed and patterned. They are not casting rules;
 * those are checked on the finished ring.
 */

/** Least metal between bore and outside, measured along the radius, mm. A modelling limit, chosen. */
export const LEAST_WALL = 0.1;

/** Least length of the seat along the cross-section, mm: its two ends must stay two points. A modelling limit, chosen. */
export const LEAST_SEAT = 0.01;

/**
 * Default radius of the inner and outer edges, mm: a casting house asks for at least 0.125 on edges
 * (morrisandwatson.com, CAD guidelines), and finishing takes up to about 0.1 a face off it.
 */
export const EDGE_DEFAULT = 0.2;

/** Largest width, thickness and bore radius, mm: far over any ring, so that double precision holds 1e-12 mm. Chosen. */
export const LARGEST_SIZE = 1000;

/** Least tolerance, mm: a nanometre, under which nothing is made and polylines grow without use. Chosen. */
export const LEAST_TOLERANCE = 1e-6;

/** Points nearer than this are one, mm: rounding. */
export const SAME_POINT = 1e-9;
