/**
 * How a ring is printed: how it stands, how thick the layers are, from which lean on an underside counts as steep.
 */

/**
 * `built`: as it was built, nothing is moved. The others are set down on z = 0: `lying` with the finger's axis upright,
 * `standing` with it level and the top of the ring up, `tilted` between the two.
 */
export const PRINT_STANCES = ["built", "lying", "standing", "tilted"] as const;

/** How the mesh lies: as built, finger axis upright, level, or in between. */
export type PrintStance = (typeof PRINT_STANCES)[number];

/** How a mesh is laid down for the printer, lengths in mm, angles in degrees. */
export interface PrintSettings {
  /** How the mesh is turned. Default built. */
  readonly stance: PrintStance;
  /** Degrees from lying, 0, to standing, 90, by which a tilted ring is turned about x; has no effect on others. Default 30. */
  readonly tilt: number;
  /** Thickness of a layer, mm, 0.001 to 1. Default 0.05. */
  readonly layer: number;
  /** Undersides that lean further from the upright than this are steep, degrees, 0 to 89. Default 45. */
  readonly support: number;
}

/**
 * Nothing is turned unless it is asked for. A tilt of 30°, layers of 0.05 mm and 45° from the upright are common practice,
 * no source: ask your printer's maker.
 */
export const PRINT_DEFAULTS = { stance: "built", tilt: 30, layer: 0.05, support: 45 } as const satisfies PrintSettings;

/**
 * What each number may be. Layers: a micrometre is below any printer, a millimetre above any ring. At 90° nothing would be
 * steep, not even a level underside.
 */
export const PRINT_RANGES = { tilt: [0, 90], layer: [0.001, 1], support: [0, 89] } as const;

/** A tilt that would go by unheard. */
export const UNTILTED = {
  code: "option-invalid",
  message: "a tilt is for a tilted ring, and this one is not",
  allowed: 'a tilt only where the stance is "tilted"',
} as const;
