/**
 * Defaults of the pattern.
 */
import { RIBBON_DEFAULTS } from "./ribbon.js";

/** Defaults of the pattern; lengths in mm unless said otherwise. */
export const PATTERN_DEFAULTS = {
  fit: { repeats: "auto", rows: 1, aspect: 1, hold: "tile", taper: "narrow" },
  symmetry: "p1",
  cycle: 1,
  cover: 360,
  gap: 0.3,
  share: 1,
  region: { unit: "tile", fill: "nonzero", round: 0, mode: "raised", broken: 0 },
  ribbon: RIBBON_DEFAULTS,
  bead: { pitch: 1.05, embed: 0.5, corners: "pass", cornerAngle: 30, junctions: "leave" },
} as const;
