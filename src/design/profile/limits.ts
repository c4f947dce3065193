/**
 * Sizes that every form of the cross-section shares: the default edge, the largest size.
 */

/**
 * Default radius of the inner and outer edges, mm: a casting house asks for at least 0.125 on edges
 * (morrisandwatson.com, CAD guidelines), and finishing takes up to about 0.1 a face off it.
 */
export const EDGE_DEFAULT = 0.2;

/** Largest width, thickness and bore radius, mm: far over any ring, so that double precision holds 1e-12 mm. Chosen. */
export const LARGEST_SIZE = 1000;
