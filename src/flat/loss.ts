/**
 * How much of a region is lost, and where most of it lay.
 */
import { ringBox } from "./box.js";
import type { GridPath } from "./grid.js";
import { type GridRegion, ringArea } from "./polygons.js";
import type { Strip } from "./strip.js";

/** What is lost of a region. */
export interface Loss {
  /** Of its area, above 0 to 1. */
  readonly share: number;
  /** Middle of the largest piece, tile widths: x from the tile's left edge, y from the strip's middle line. */
  readonly x: number;
  readonly y: number;
}

/**
 * The loss; undefined where nothing is lost.
 *
 * @param lost what is lost, over one period
 * @param area the whole region's area over the same period, grid steps squared
 */
export function lossOf({ grid: { tile } }: Strip, lost: GridRegion, area: number): Loss | undefined {
  const outers = lost.filter((ring) => ringArea(ring) > 0);
  if (outers.length === 0) return undefined;
  const largest = outers.reduce((best, ring) => (ringArea(ring) > ringArea(best) ? ring : best));
  const { left, right, low, high } = ringBox(largest);
  const x = (left + right) / (2 * tile);
  const share = Math.min(1, areaOf(lost) / area);
  return { share, x: x - Math.floor(x), y: (low + high) / (2 * tile) };
}

/** Area of rings, holes taken off, grid steps squared. */
export function areaOf(rings: readonly GridPath[]): number {
  return rings.reduce((sum, ring) => sum + ringArea(ring), 0);
}

/** Digits of shares and of places that are shown. */
const SHARE_DIGITS = 2;
const PLACE_DIGITS = 3;

/** Percent in a whole. */
const PERCENT = 100;

/** The loss in words: "1.2 % of its area, most of it at x 0.3, y 0.1 (tile widths)". */
export function describeLoss({ share, x, y }: Loss): string {
  const [left, up] = [x, y].map((at) => Number(at.toFixed(PLACE_DIGITS)));
  return `${Number((PERCENT * share).toPrecision(SHARE_DIGITS))} % of its area, most of it at x ${left}, y ${up} (tile widths)`;
}

/** The loss in figures as they are shown. */
export function roundLoss({ share, x, y }: Loss): Loss {
  const place = (at: number) => Number(at.toFixed(PLACE_DIGITS));
  return { share: Number(share.toPrecision(SHARE_DIGITS)), x: place(x), y: place(y) };
}
