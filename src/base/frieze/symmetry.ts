/**
 * The seven frieze groups, by their IUC names, as operations on a tile.
 *
 * Elements stand where design documents expect them: vertical mirrors at x = 0 and ½ (p1m1, p2mm, p2mg), the
 * horizontal mirror on y = 0 (p11m, p2mm), the glide along y = 0 by ½ (p11g, p2mg), two-fold centres at the origin
 * (p2, p2mm) or at x = ¼ (p2mg). Source of the list and its names: International Tables for Crystallography, vol. E.
 */

/** One operation, up to whole tiles: x′ = ±x + shift, y′ = ±y, in tile widths. */
export interface TileOperation {
  readonly flipX: boolean;
  readonly flipY: boolean;
  /** Tile widths along the band: 0 or ½. */
  readonly shift: 0 | 0.5;
}

/** A frieze group: translations by whole tiles, and these. */
export interface FriezeGroup {
  /** IUC name. */
  readonly name: string;
  readonly summary: string;
  /** One operation of each coset of the translations; the identity first. */
  readonly operations: readonly TileOperation[];
}

const IDENTITY: TileOperation = { flipX: false, flipY: false, shift: 0 };
const VERTICAL_MIRROR: TileOperation = { flipX: true, flipY: false, shift: 0 };
const HORIZONTAL_MIRROR: TileOperation = { flipX: false, flipY: true, shift: 0 };
const HALF_TURN: TileOperation = { flipX: true, flipY: true, shift: 0 };
const GLIDE: TileOperation = { flipX: false, flipY: true, shift: 0.5 };
const QUARTER_HALF_TURN: TileOperation = { flipX: true, flipY: true, shift: 0.5 };

/** All seven, from the poorest to the richest. */
export const friezeGroups = [
  { name: "p1", summary: "translation only", operations: [IDENTITY] },
  { name: "p11g", summary: "glide along the middle line", operations: [IDENTITY, GLIDE] },
  { name: "p1m1", summary: "mirrors across the band", operations: [IDENTITY, VERTICAL_MIRROR] },
  { name: "p2", summary: "half turns", operations: [IDENTITY, HALF_TURN] },
  { name: "p11m", summary: "mirror along the middle line", operations: [IDENTITY, HORIZONTAL_MIRROR] },
  {
    name: "p2mg",
    summary: "mirrors across, glide along, half turns between",
    operations: [IDENTITY, VERTICAL_MIRROR, GLIDE, QUARTER_HALF_TURN],
  },
  {
    name: "p2mm",
    summary: "mirrors across and along",
    operations: [IDENTITY, VERTICAL_MIRROR, HORIZONTAL_MIRROR, HALF_TURN],
  },
] as const satisfies readonly FriezeGroup[];

/** Names of the groups, for schemas. */
export type FriezeName = (typeof friezeGroups)[number]["name"];

/** The group of that name. */
export function friezeGroup(name: FriezeName): FriezeGroup {
  return friezeGroups.find((group) => group.name === name) as FriezeGroup;
}
