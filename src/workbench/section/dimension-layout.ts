/**
 * A dimension's lines and where its number stands, CSS pixels: as ISO 129-1 draws them, extension lines that start clear of the
 * object, a dimension line with filled arrowheads, from outside where there is no room within.
 */
import type { ScreenPoint } from "../strip/flat-view.js";
import type { Dimension, Grip, SectionPoint } from "./dimensions.js";

/** Where a place of the cross-section lies on the screen, and the box that the cross-section fills there. */
export interface SectionPlace {
  readonly at: (point: SectionPoint) => ScreenPoint;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Which side or corner of a number's box stands at its point: that of two numbers above, each makes way for the other. */
export type NumberAnchor = "left" | "right" | "above" | "above-left" | "above-right" | "below";

type ScreenLine = readonly [ScreenPoint, ScreenPoint];

export interface DimensionLayout {
  readonly lines: readonly ScreenLine[];
  /** Filled triangles. */
  readonly arrows: readonly (readonly [ScreenPoint, ScreenPoint, ScreenPoint])[];
  /** The corner or side of the number's box that stands at a point. */
  readonly number: { readonly at: ScreenPoint; readonly anchor: NumberAnchor };
}

/** CSS pixels: arrowheads, what extension lines leave free and go beyond, how far lines stand off. Chosen as on paper at 4 px a mm. */
const ARROW = { length: 8, half: 2.5 } as const;
const CLEAR = 3;
const BEYOND = 5;
const OFF = { left: 22, right: 20, above: 14, below: 14, inside: 0 } as const;

/** Room below which arrows stand outside and point in, and the tails that they have there. */
const NARROW = 3 * ARROW.length;
const TAIL = 8;

/** Leaders of radii stand off this far on either axis. */
const LEADER = 12;

export function layOut(dimension: Dimension, place: SectionPlace): DimensionLayout {
  if (dimension.kind === "radius") return leader(dimension, place);
  return dimension.kind === "across" ? acrossBand(dimension, place) : outwards(dimension, place);
}

/** Where a grip stands: at its arrow's tip. */
export function gripAt({ kind, side }: Dimension, { at }: Grip, place: SectionPlace): ScreenPoint {
  const [x, y] = place.at(at);
  if (kind === "radius" || side === "inside") return [x, y];
  if (kind === "across") return [side === "left" ? place.left - OFF.left : place.right + OFF.right, y];
  return [x, side === "above" ? place.top - OFF.above : place.bottom + OFF.below];
}

/** Measured across the band: its line is upright. */
function acrossBand({ from, to, side }: Dimension, place: SectionPlace): DimensionLayout {
  const [a, b] = [place.at(from), place.at(to)];
  const away = side === "left" ? -1 : 1;
  const edge = side === "left" ? place.left : place.right;
  const x = edge + away * OFF[side];
  const extension = ([, y]: ScreenPoint): ScreenLine => [
    [edge + away * CLEAR, y],
    [x + away * BEYOND, y],
  ];
  const middle = (a[1] + b[1]) / 2;
  return {
    lines: [extension(a), extension(b), ...alongLine(a[1], b[1], (s) => [x, s]).lines],
    arrows: alongLine(a[1], b[1], (s) => [x, s]).arrows,
    number: { at: [x + away * BEYOND, middle], anchor: side === "left" ? "left" : "right" },
  };
}

/** Measured outward: its line is level. */
function outwards({ from, to, side }: Dimension, place: SectionPlace): DimensionLayout {
  const [a, b] = [place.at(from), place.at(to)];
  if (side === "inside") {
    const drawn = alongLine(a[0], b[0], (s) => [s, a[1]]);
    return { ...drawn, number: { at: [Math.max(place.right, b[0]) + BEYOND, a[1]], anchor: "right" } };
  }
  const away = side === "above" ? -1 : 1;
  const edge = side === "above" ? place.top : place.bottom;
  const y = edge + away * OFF[side];
  const extension = ([x]: ScreenPoint): ScreenLine => [
    [x, edge + away * CLEAR],
    [x, y + away * BEYOND],
  ];
  const drawn = alongLine(a[0], b[0], (s) => [s, y]);
  return {
    lines: [extension(a), extension(b), ...drawn.lines],
    arrows: drawn.arrows,
    number: {
      at: [(a[0] + b[0]) / 2, y + away * BEYOND],
      anchor: side === "below" ? side : aboveOf(place, a[0], b[0]),
    },
  };
}

/** What is measured at the bore makes way to the left, at the outside to the right; all of it stands in the middle. */
function aboveOf({ left, right }: SectionPlace, from: number, to: number): NumberAnchor {
  const middle = (left + right) / 2;
  if (from < middle !== to < middle) return "above";
  return from < middle ? "above-left" : "above-right";
}

function leader({ to, side }: Dimension, place: SectionPlace): DimensionLayout {
  const tip = place.at(to);
  if (side === "inside") {
    const end: ScreenPoint = [place.right + LEADER, tip[1]];
    return { lines: [[tip, end]], arrows: [], number: { at: end, anchor: "right" } };
  }
  const away = side === "left" ? -1 : 1;
  const edge = side === "left" ? place.left : place.right;
  const end: ScreenPoint = [edge + away * LEADER, place.bottom + LEADER];
  const length = Math.hypot(end[0] - tip[0], end[1] - tip[1]) || 1;
  const unit: ScreenPoint = [(end[0] - tip[0]) / length, (end[1] - tip[1]) / length];
  return {
    lines: [[tip, end]],
    arrows: [head(tip, unit)],
    number: { at: end, anchor: side === "left" ? "left" : "right" },
  };
}

/** The dimension line with its two arrowheads. */
function alongLine(
  from: number,
  to: number,
  put: (s: number) => ScreenPoint,
): Pick<DimensionLayout, "lines" | "arrows"> {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const within = high - low >= NARROW;
  const reach = within ? 0 : ARROW.length + TAIL;
  const ahead: ScreenPoint = [put(1)[0] - put(0)[0], put(1)[1] - put(0)[1]];
  const inward = within ? 1 : -1;
  const turned = (sign: number): ScreenPoint => [sign * ahead[0], sign * ahead[1]];
  return {
    lines: [[put(low - reach), put(high + reach)]],
    arrows: [head(put(low), turned(inward)), head(put(high), turned(-inward))],
  };
}

/** An arrowhead with its tip at a point, its foot along a unit vector. */
function head(tip: ScreenPoint, [dx, dy]: ScreenPoint): readonly [ScreenPoint, ScreenPoint, ScreenPoint] {
  const foot: ScreenPoint = [tip[0] + ARROW.length * dx, tip[1] + ARROW.length * dy];
  const side = (sign: number): ScreenPoint => [foot[0] - sign * ARROW.half * dy, foot[1] + sign * ARROW.half * dx];
  return [tip, side(1), side(-1)];
}
