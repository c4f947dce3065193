/**
 * Densities of pure metals, g/cm³, for the mixing rule.
 */

/** g/cm³. Gold, silver and copper as in published worked mixtures; the platinum group from one measured set. */
export const pureDensities = {
  /** Several sources agree. */
  Au: 19.32,
  /** Several sources agree. */
  Ag: 10.49,
  /** As in the published worked mixture Au 583, Ag 104, Cu 313. */
  Cu: 8.96,
  /** Platinum Metals Rev. 16(2), 1972, p. 59, as the four that follow. */
  Pt: 21.45,
  Ir: 22.65,
  Pd: 12.02,
  Rh: 12.41,
  Ru: 12.45,
  /** From memory. */
  Co: 8.9,
  /** From memory. */
  Zn: 7.14,
} as const;
