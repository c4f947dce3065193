/**
 * The section of a channel's groove, of its raised walls and of a bright cut, in closed form: (y, z) across the row, in pieces that
 * are grown by so many mm or shrunk.
 */

import { heightOfWidth } from "./hollow-body.js";
import { below, type Clip, type Piece } from "./span.js";
import type { StoneView } from "./stone-view.js";
import { BROKEN, bearingOpen, ROOM } from "./told.js";

export interface GrooveAsked {
  readonly cover: number;
  /** Radians. */
  readonly bearing: number;
  readonly notched: boolean;
}

/** A section's pieces. */
export type SectionPieces = (grown: number) => readonly Piece[];

export interface Groove {
  readonly half: number;
  /** Height of its ledges at most. */
  readonly ledge: number;
  readonly pieces: SectionPieces;
}

/** Open above. */
const UP = Number.POSITIVE_INFINITY;

/** y no farther to either side than so many mm, and by so much more for a mm of height. */
export function between(half: number, slope = 0): Clip[] {
  return [below(0, 1, -slope, half), below(0, -1, -slope, half)];
}

export function grooveOf(stone: StoneView, along: number, { cover, bearing, notched }: GrooveAsked): Groove {
  const { half: wide, keel, table, corners } = stone.across(along);
  const [half, notch] = [wide * (1 - 2 * cover), wide + ROOM];
  const [down, up] = [stone.pavilion / (wide - keel), stone.crown / (wide - table)];
  // Faces of these slopes, begun one room beside the girdle, where every corner keeps its room at right angles to them.
  const inside = (slope: number, reach: number) => slope * (notch - reach) - ROOM * Math.hypot(1, slope);
  const lower = corners.reduce(
    (least, { reach, z }) => (z > 0 ? least : Math.min(least, z + inside(down, reach))),
    -stone.band - ROOM,
  );
  // A row round the finger falls away below a stone beside its middle, by the square of the way over twice its radius.
  const { row, at } = stone.placed;
  const bend = row === undefined || row.count === 1 ? 0 : 1 / (2 * Math.hypot(at[0], at[1]));
  const upper = corners.reduce(
    (most, { reach, ahead, z }) => (z < 0 ? most : Math.max(most, z + bend * ahead * ahead - inside(up, reach))),
    ROOM,
  );
  const rises = Math.max(up, Math.tan(bearing - Math.atan(down)));
  // No higher than where the stone's own hollow is as wide as the groove.
  const ledge = Math.min(lower - (notch - half) * down, heightOfWidth(stone, (half - keel) / (notch - keel)));
  const open = bearingOpen(stone.placed.stone);
  return {
    half,
    ledge,
    pieces: (grown) => {
      const more = grown > 0 ? open + grown : grown;
      const slot: Piece = { low: ledge - more, high: UP, clips: between(half + grown) };
      if (!notched) return [slot];
      // Of the notch what lies on one side: below both its upper face and above the lower one.
      const notchOn = (side: 1 | -1): Piece => ({
        low: Number.NEGATIVE_INFINITY,
        high: UP,
        clips: [
          below(0, -side, 0, -half - Math.min(0, grown)),
          below(0, side, 0, notch + grown),
          below(0, side * down, -1, notch * down - lower + more),
          below(0, side * rises, 1, notch * rises + upper + more),
        ],
      });
      return [slot, notchOn(1), notchOn(-1)];
    },
  };
}

/** Both raised walls with what lies between them. */
export function wallPieces(
  half: number,
  {
    wall,
    top,
    foot,
    sure,
  }: { readonly wall: number; readonly top: number; readonly foot: number; readonly sure: number },
): SectionPieces {
  const broken = Math.min(BROKEN, wall / 3);
  const outer = half + wall;
  return (grown) => {
    const edge = outer + top - broken + grown;
    const clips = [...between(outer + grown), below(0, 1, 1, edge), below(0, -1, 1, edge)];
    return [{ low: grown < 0 ? sure : foot, high: top + grown, clips }];
  };
}

export interface BrightSizes {
  /** How far the floor at the girdle goes, mm, and how wide the slope beside it is. */
  readonly floor: number;
  readonly border: number;
  /** Height of the surface at which the slope ends. */
  readonly surface: number;
}

/**
 * A floor at the girdle, and a slope beside it up to the surface.
 *
 * @param within what lies no farther out than so many mm, and by so much more for a mm of height
 */
export function brightPieces(
  { floor, border, surface }: BrightSizes,
  within: (by: number, slope?: number) => readonly Clip[],
): SectionPieces {
  return (grown) => {
    const flat: Piece = { low: -grown, high: UP, clips: within(floor + grown) };
    if (surface < 0) return [flat];
    if (surface === 0) return [{ ...flat, clips: within(floor + border + grown) }];
    const clips = [...within(floor + grown, border / surface), ...within(floor + border + grown)];
    return [flat, { low: Math.max(0, -grown), high: UP, clips }];
  };
}
