/**
 * A stone as it is cut, and its measures in mm.
 *
 * Coordinates of every stone: x along its length, y across, z out of the ring; the origin in the middle of its length and
 * width, in the plane of the girdle's upper edge. So the crown lies above z = 0, the girdle from 0 down, the pavilion below it.
 */

/** The cuts, in the order of tables. */
export const CUT_NAMES = [
  "round",
  "oval",
  "marquise",
  "pear",
  "princess",
  "square-step",
  "emerald",
  "baguette",
  "tapered-baguette",
  "cabochon",
] as const;

/** The shape that a stone is cut to. */
export type CutName = (typeof CUT_NAMES)[number];

/** Shares of a stone's width; 1 is the whole width. All angles follow from them. */
export interface Proportions {
  /** Width of the table, the flat on top. A cabochon's is 0. */
  readonly table: number;
  /** From the girdle's upper edge up to the table, or to the top of a cabochon. */
  readonly crownHeight: number;
  /** Height of the girdle where it is highest: of brilliants where the main facets of crown and pavilion meet it. */
  readonly girdle: number;
  /** From the girdle's lower edge down to the culet. A cabochon's is 0. */
  readonly pavilionDepth: number;
  /** Width of the culet, the small flat below; 0 leaves a point or a keel. */
  readonly culet: number;
  /** Brilliants alone: how far the star facets reach from the table's edge to the girdle, of that way seen from above. */
  readonly star?: number;
  /** Brilliants alone: how far the lower halves reach from the girdle to the culet, of that way seen from below. */
  readonly lowerHalf?: number;
}

/** A stone as it is cut; lengths in mm. */
export interface Stone {
  readonly cut: CutName;
  /** Along x, mm; of a round or square stone the same as the width. */
  readonly length: number;
  /** Across, along y, mm; of a tapered baguette at its wide end, which is the one at −x. */
  readonly width: number;
  /** Tapered baguette alone: width at its narrow end, mm. */
  readonly narrow?: number;
  readonly proportions: Proportions;
  /** Symbol of its material, of the catalogue or the user's own. */
  readonly gem: string;
}

/** Heights of a stone, mm. */
export interface StoneHeights {
  /** The table's above the girdle's upper edge. */
  readonly crown: number;
  /** Of the girdle where it is highest. */
  readonly girdle: number;
  /** From the girdle's lower edge to the culet. */
  readonly pavilion: number;
  /** All three. */
  readonly depth: number;
}

/** The heights of a stone, mm. */
export function heightsOf({ width, proportions }: Pick<Stone, "width" | "proportions">): StoneHeights {
  const crown = proportions.crownHeight * width;
  const girdle = proportions.girdle * width;
  const pavilion = proportions.pavilionDepth * width;
  return { crown, girdle, pavilion, depth: crown + girdle + pavilion };
}
