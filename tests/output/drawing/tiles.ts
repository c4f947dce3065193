/** Small designs to draw, whose areas are known. */
export const CHANNEL = {
  annulet: 1,
  name: "Two squares",
  size: { system: "iso", value: 54 },
  profile: {
    width: 6,
    thickness: 2,
    bore: { form: "flat", edge: 0 },
    outside: { form: "channel", rail: 0.8, depth: 0.6, edge: 0 },
  },
  pattern: {
    symmetry: "p1m1",
    fit: { hold: "tile" },
    regions: [
      // A quarter of the tile's width and height, drawn once and mirrored: an eighth of the tile.
      { name: "square", path: "M 0.125 -0.125 h 0.25 v 0.25 h -0.25 z", height: 0.4 },
      // Across the tile's border: half in each tile.
      { name: "bar", path: "M -0.05 -0.4 h 0.1 v 0.2 h -0.1 z", height: 0.3 },
    ],
  },
  material: "ag925",
} as const;

/** Area of its regions, in squares of the tile's width. */
export const CHANNEL_AREA = 2 * 0.25 * 0.25 + 0.1 * 0.2;

/** A domed band, on which rows differ in length. */
export const DOMED = {
  ...CHANNEL,
  name: "Domed",
  profile: { width: 6, thickness: 2.2, bore: { form: "flat" }, outside: { form: "domed", rise: 0.9, edge: 0.2 } },
} as const;
