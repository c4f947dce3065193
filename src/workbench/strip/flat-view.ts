/**
 * How the flat views look at the band: at one scale, with one v axis, so that what lies in line is the same length.
 */

/** Where the flat views look, and how near. */
export interface FlatView {
  /** CSS pixels in a millimetre. */
  readonly scale: number;
  /** What lies in the view's middle: mm along the band from the own tile's left border, and across it from the seat's middle. */
  readonly u: number;
  readonly v: number;
  /** What is kept in view when sizes change: the band's width, the whole strip, or what the maker chose. */
  readonly hold: "band" | "strip" | "free";
}

/** A place on the screen, or a size of it, CSS pixels from the view's upper left corner. */
export type ScreenPoint = readonly [x: number, y: number];

/** A place on the flat band, mm. */
export type FlatPoint = readonly [u: number, v: number];

/** Least and largest scale, pixels in a millimetre: a whole strip on a phone, and a hundredth of a millimetre to be seen. Chosen. */
const SCALES = { least: 1, most: 2000 } as const;

/** Room above and below the band for dimensions, CSS pixels. */
export const BAND_MARGIN = 66;

/** Room left and right of a whole strip, CSS pixels. */
const STRIP_MARGIN = 16;

function within(scale: number): number {
  return Math.min(SCALES.most, Math.max(SCALES.least, scale));
}

export function toScreen(view: FlatView, size: ScreenPoint, [u, v]: FlatPoint): ScreenPoint {
  return [size[0] / 2 + (u - view.u) * view.scale, size[1] / 2 - (v - view.v) * view.scale];
}

export function toFlat(view: FlatView, size: ScreenPoint, [x, y]: ScreenPoint): FlatPoint {
  return [view.u + (x - size[0] / 2) / view.scale, view.v - (y - size[1] / 2) / view.scale];
}

/** Nearer by a factor, with what lies at a place of the screen kept there. */
export function zoomed(view: FlatView, size: ScreenPoint, at: ScreenPoint, factor: number): FlatView {
  const scale = within(view.scale * factor);
  const [u, v] = toFlat(view, size, at);
  const [x, y] = toFlat({ ...view, scale }, size, at);
  return { scale, u: view.u + u - x, v: view.v + v - y, hold: "free" };
}

/** Moved along with a pointer, CSS pixels. */
export function panned(view: FlatView, [dx, dy]: ScreenPoint): FlatView {
  return { ...view, u: view.u - dx / view.scale, v: view.v + dy / view.scale, hold: "free" };
}

/** What a view is fitted to; mm. */
export interface FlatSizes {
  readonly bandWidth: number;
  readonly tileWidth: number;
  /** Of all that is shown along the band. */
  readonly from: number;
  readonly to: number;
  /** By what factor letters are larger than 16 CSS pixels: dimensions need as much more room. Default 1. */
  readonly letters?: number;
}

/** The band's whole width in view, its own tile in the middle. */
export function fitBand(size: ScreenPoint, { bandWidth, tileWidth, letters = 1 }: FlatSizes): FlatView {
  const room = Math.max(1, size[1] - 2 * BAND_MARGIN * letters);
  return { scale: within(room / bandWidth), u: tileWidth / 2, v: 0, hold: "band" };
}

/** The whole strip in view, across too. */
export function fitStrip(size: ScreenPoint, { bandWidth, from, to, letters = 1 }: FlatSizes): FlatView {
  const along = Math.max(1, size[0] - 2 * STRIP_MARGIN) / (to - from);
  const across = Math.max(1, size[1] - 2 * BAND_MARGIN * letters) / bandWidth;
  return { scale: within(Math.min(along, across)), u: (from + to) / 2, v: 0, hold: "strip" };
}

/** The view once sizes are others: what it holds is held. */
export function held(view: FlatView, size: ScreenPoint, sizes: FlatSizes): FlatView {
  if (view.hold === "free") return view;
  return view.hold === "band" ? fitBand(size, sizes) : fitStrip(size, sizes);
}
