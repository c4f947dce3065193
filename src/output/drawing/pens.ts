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
  /** Metal that is cut through. */
  metal: "#efe9dc",
  /** What goes through the band. */
  hole: "#4a4f55",
} as const;

/** What is made of metal is finer than the series: its details are a few tenths of a millimetre. */
const WIDTHS = { bead: 0.04, fine: 0.07, thin: 0.13, thick: 0.18, outline: 0.35 } as const;

/** Strokes without a fill. */
export const PENS = {
  /** Beads. */
  bead: { fill: "none", stroke: INK, "stroke-width": WIDTHS.bead },
  /** Outlines of regions. */
  fine: { fill: "none", stroke: INK, "stroke-width": WIDTHS.fine },
  /** Dimensions, extension lines, tile borders. */
  thin: { fill: "none", stroke: INK, "stroke-width": WIDTHS.thin },
  /** What is not cut through or lies in front of the cut, as the bore's narrowest circle. */
  dashed: { fill: "none", stroke: INK, "stroke-width": WIDTHS.thin, "stroke-dasharray": "1.6 0.8" },
  /** Outlines of a cut. */
  outline: { fill: "none", stroke: INK, "stroke-width": WIDTHS.outline, "stroke-linejoin": "round" },
  /** Hatching of a cut. */
  hatch: { fill: "none", stroke: INK, "stroke-width": WIDTHS.fine },
  /** The seat's edges. */
  thick: { fill: "none", stroke: INK, "stroke-width": WIDTHS.thick },
  /** A mirror line. */
  mirror: { fill: "none", stroke: ACCENT, "stroke-width": WIDTHS.thin },
  /** A glide line; its dashes are short, so that a small tile shows several. */
  glide: { fill: "none", stroke: ACCENT, "stroke-width": WIDTHS.thin, "stroke-dasharray": "0.8 0.4" },
} as const satisfies Readonly<Record<string, Attributes>>;

/** Opacity of the fundamental region's shade. */
export const REGION_SHADE = { fill: COLOURS.region, "fill-opacity": 0.25 } as const;

type Colour = readonly [red: number, green: number, blue: number];

/** From the lowest to the highest of several raised heights, and from the least to the greatest of several depths. */
const RAMPS = {
  raised: [
    [236, 226, 203],
    [176, 146, 92],
  ],
  sunk: [
    [214, 219, 223],
    [148, 158, 167],
  ],
} as const satisfies Readonly<Record<string, readonly [Colour, Colour]>>;

/** The fill of the i-th of `count` heights, or depths. */
export function rampFill(ramp: keyof typeof RAMPS, i: number, count: number): string {
  const share = count === 1 ? 0.5 : i / (count - 1);
  const [low, high] = RAMPS[ramp];
  const mix = low.map((part, k) => Math.round(part + share * (high[k] - part)));
  return `#${mix.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}
