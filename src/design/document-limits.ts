/** How much a document may hold: far above any design, below what would exhaust memory or the stack. */

/** Longest text of a document, in characters. */
export const MAX_DESIGN_LENGTH = 5_000_000;

/** Most nested lists and objects; shapes nest 24 deep, two levels each. */
const MAX_DESIGN_DEPTH = 64;

/** Most values: a parsed value with its place takes about 0.3 kB. */
export const MAX_DESIGN_VALUES = 200_000;

export const limits = { characters: MAX_DESIGN_LENGTH, depth: MAX_DESIGN_DEPTH, values: MAX_DESIGN_VALUES } as const;
