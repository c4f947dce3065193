/**
 * Names of the built-in size systems, for types.
 */

/** Names of the built-in size systems, in the order of the catalogue. */
export const SIZE_SYSTEM_NAMES = ["iso", "us", "us-gauge", "uk", "japan", "swiss", "german", "india"] as const;

/** Name of a built-in size system. */
export type SizeSystemName = (typeof SIZE_SYSTEM_NAMES)[number];
