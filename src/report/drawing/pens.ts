/**
 * Line widths and colours of drawings. Widths in mm, from the series of ISO 128 (from memory).
 */
import type { Attributes } from "./svg.js";

const INK = "#1a1a1a";

/** Symmetry elements stand out from what is made of metal. */
const ACCENT = "#b3261e";

export const COLOURS = {
  ink: INK,
  accent: ACCENT,
  /** Laid over the fundamental region. */
  region: "#2563b0",
  /** The lowest and the highest of several heights. */
  low: [236, 226, 203],
  high: [176, 146, 92],
} as const;

/** What is made of metal is finer than the series: its details are a few tenths of a millimetre. */
const WIDTHS = { bead: 0.04, fine: 0.07, thin: 0.13, thick: 0.18 } as const;

/** Strokes without a fill. */
export const PENS = {
  /** Beads. */
  bead: { fill: "none", stroke: INK, "stroke-width": WIDTHS.bead },
  /** Outlines of regions. */
  fine: { fill: "none", stroke: INK, "stroke-width": WIDTHS.fine },
  /** Dimensions, extension lines, tile borders. */
  thin: { fill: "none", stroke: INK, "stroke-width": WIDTHS.thin },
  /** The seat's edges. */
  thick: { fill: "none", stroke: INK, "stroke-width": WIDTHS.thick },
  /** A mirror line. */
  mirror: { fill: "none", stroke: ACCENT, "stroke-width": WIDTHS.thin },
  /** A glide line; its dashes are short, so that a small tile shows several. */
  glide: { fill: "none", stroke: ACCENT, "stroke-width": WIDTHS.thin, "stroke-dasharray": "0.8 0.4" },
} as const satisfies Readonly<Record<string, Attributes>>;

/** Opacity of the fundamental region's shade. */
export const REGION_SHADE = { fill: COLOURS.region, "fill-opacity": 0.25 } as const;

/** The fill of the i-th of `count` heights, lowest first. */
export function heightFill(i: number, count: number): string {
  const share = count === 1 ? 0.5 : i / (count - 1);
  const mix = COLOURS.low.map((low, k) => Math.round(low + share * (COLOURS.high[k] - low)));
  return `#${mix.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}
