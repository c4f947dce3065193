/**
 * The band's cross-section, hatched, with its sizes: bore below, outside above, the finger's axis far beneath.
 */

import type { ExactProfile } from "../../band/profile/profile.js";
import { thicknessOf } from "../../band/profile/thickness-of.js";
import {
  type Arc,
  flattenSegment,
  pointAt,
  type Segment,
  segmentBounds,
  segmentEnd,
  segmentLength,
  segmentStart,
  tangentAt,
} from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { DIMENSION_DEPTH, levelDimension, UPRIGHT_TEXT, uprightDimension, uprightWidth } from "../drawing/dimension.js";
import { type Figure, WIDEST } from "../drawing/figure.js";
import { type Leader, leaderRow } from "../drawing/leader.js";
import { COLOURS, PENS } from "../drawing/pens.js";
import { scaleFor, showScale } from "../drawing/scales.js";
import { element, group, pathData } from "../drawing/svg.js";

/** Name of the figure. */
export const SECTION_FIGURE = "section-figure";

export interface SectionFigureOptions {
  /** Where on the ring, for the title. Default nowhere: it is the same all round. */
  readonly at?: string;
  /** How high the relief stands above the seat, mm; 0 where there is none. */
  readonly relief: number;
  /** mm, of a channel's rails and how deep its floor lies below them. */
  readonly rail?: number;
  readonly depth?: number;
}

/** Most height of the section itself, mm on paper. */
const MOST_HEIGHT = 70;

/** From the section to the first dimension line beside it, and from a dimension's text to the next line, mm. */
const FIRST = 5;
const NEXT = 1.5;

/** From the section to the row of leaders' texts, and from there to the dimension line, mm. */
const LEADER_GAP = 8.5;
const ROW_TO_LINE = 4.5;

/** Distance of hatching lines, mm. */
const HATCH = 1.6;

/** How far the drawn curves may lie from the exact ones, mm on paper. */
const SMOOTH = 0.01;

/** Radii nearer than this are one, mm. */
const SAME_RADIUS = 5e-4;

/** Draws the section as large as it has room. */
export function drawSection(profile: ExactProfile, options: SectionFigureOptions): Figure {
  const { width, boreRadius } = profile;
  const height = crestOf(profile, options) - boreRadius;
  const sides = { left: sideRoom(leftSizes(profile)), right: sideRoom(rightSizes(profile, options)) };
  const scale = scaleFor([width, height], [WIDEST - sides.left - sides.right, MOST_HEIGHT]);
  const above = LEADER_GAP + (options.rail === undefined ? 2 : ROW_TO_LINE + DIMENSION_DEPTH);
  const middle = sides.left + (width * scale) / 2;
  const base = above + height * scale;
  const put = ([w, r]: Point2): Point2 => [middle + w * scale, base - (r - boreRadius) * scale];
  return {
    name: SECTION_FIGURE,
    title: options.at === undefined ? "Cross-section" : `Cross-section ${options.at}`,
    scale: showScale(scale),
    width: sides.left + width * scale + sides.right,
    height: base + LEADER_GAP + ROW_TO_LINE + DIMENSION_DEPTH,
    content: [
      ...cut(profile, put, scale, options.relief),
      ...levelSizes(profile, options, put),
      ...uprightSizes(leftSizes(profile), put([-width / 2, 0])[0], -1, put),
      ...uprightSizes(rightSizes(profile, options), put([width / 2, 0])[0], 1, put),
      ...leaders(profile, options, put),
    ],
  };
}

type Put = (point: Point2) => Point2;

/** The cut: metal, hatching, outline, the bore's narrowest circle and the relief's top. */
function cut(profile: ExactProfile, put: Put, scale: number, relief: number): string[] {
  const { outline, width, boreRadius, bore } = profile;
  const ring = flatten(outline, scale).map(put);
  const d = pathData([ring], true);
  const level = (r: number): Point2[] => [put([-width / 2, r]), put([width / 2, r])];
  return [
    element("path", { class: "section", d, fill: COLOURS.metal }),
    group("hatching", hatch(ring)),
    element("path", { class: "section-outline", d, ...PENS.outline }),
    ...(bore === "comfort" ? [element("path", { d: pathData([level(boreRadius)], false), ...PENS.dashed })] : []),
    ...(relief > 0
      ? [
          element("path", {
            class: "relief-top",
            d: pathData([raisedSeat(profile, relief, scale).map(put)], false),
            ...PENS.dashed,
          }),
        ]
      : []),
  ];
}

/** Points along segments, the first one's start and each one's end among them. */
function flatten(segments: readonly Segment[], scale: number): Point2[] {
  return [segmentStart(segments[0]), ...segments.flatMap((segment) => flattenSegment(segment, SMOOTH / scale))];
}

/** The line `height` above the seat, square to it. */
function raisedSeat({ seat }: ExactProfile, height: number, scale: number): Point2[] {
  return seat.flatMap((segment) => {
    const length = segmentLength(segment);
    const count = segment.kind === "line" ? 1 : flattenSegment(segment, SMOOTH / scale).length;
    return Array.from({ length: count + 1 }, (_, i): Point2 => {
      const s = (length * i) / count;
      const [w, r] = pointAt(segment, s);
      const [tw, tr] = tangentAt(segment, s);
      // From low w to high w the outside lies to the left.
      return [w - height * tr, r + height * tw];
    });
  });
}

/** Hatching lines at 45° within a closed line, each cut where it meets it (even and odd crossings). */
function hatch(ring: readonly Point2[]): string {
  const sums = ring.map(([x, y]) => x + y);
  const lines: Point2[][] = [];
  for (let sum = Math.ceil(Math.min(...sums) / HATCH) * HATCH; sum < Math.max(...sums); sum += HATCH) {
    const crossings = ring.flatMap((from, i): Point2[] => {
      const to = ring[(i + 1) % ring.length];
      const [a, b] = [from[0] + from[1] - sum, to[0] + to[1] - sum];
      if (a < 0 === b < 0) return [];
      const t = a / (a - b);
      return [[from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]];
    });
    crossings.sort((p, q) => p[0] - q[0]);
    for (let i = 0; i + 1 < crossings.length; i += 2) lines.push([crossings[i], crossings[i + 1]]);
  }
  return element("path", { d: pathData(lines, false), ...PENS.hatch });
}

/** An upright size, from radius to radius. */
interface UprightSize {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** mm on paper that a side takes with its sizes; leaders' texts stand out by some at least. */
function sideRoom(sizes: readonly UprightSize[]): number {
  return Math.max(LEADER_ROOM, FIRST + sizes.reduce((sum, size) => sum + uprightWidth(textsOf(size)) + NEXT, 0));
}

/** How far leaders' texts may stand out beyond the section, mm. */
const LEADER_ROOM = 22;

function textsOf({ from, to, label }: UprightSize) {
  return { label, value: (to - from).toFixed(3) };
}

function leftSizes(profile: ExactProfile): UprightSize[] {
  const { boreRadius } = profile;
  const rise = edgeOfBore(profile) - boreRadius;
  return [
    ...(profile.bore === "comfort" && rise > 0 ? [{ from: boreRadius, to: boreRadius + rise, label: "rise" }] : []),
    { from: boreRadius, to: boreRadius + thicknessOf(profile), label: "thickness" },
  ];
}

function rightSizes(profile: ExactProfile, { relief, rail, depth }: SectionFigureOptions): UprightSize[] {
  const seat = middleOfSeat(profile);
  const top = profile.boreRadius + profile.thickness;
  return [
    ...(rail !== undefined && depth !== undefined ? [{ from: top - depth, to: top, label: "depth" }] : []),
    ...(relief > 0 ? [{ from: seat, to: seat + relief, label: "relief" }] : []),
    { from: profile.boreRadius, to: seat, label: "wall, middle" },
  ];
}

/** The largest radius of all that is drawn: the band's, or the relief's where it stands above. */
function crestOf(profile: ExactProfile, { relief }: SectionFigureOptions): number {
  return Math.max(profile.outsideRadius, middleOfSeat(profile) + relief);
}

/** Radius of the seat at its middle. */
function middleOfSeat({ seat, seatLength }: ExactProfile): number {
  let left = seatLength / 2;
  for (const segment of seat) {
    const length = segmentLength(segment);
    if (left <= length) return pointAt(segment, left)[1];
    left -= length;
  }
  return segmentEnd(seat[seat.length - 1])[1];
}

/** Radius of the bore where its rounded edges begin. */
function edgeOfBore({ boreFace, boreRadius }: ExactProfile): number {
  const ends = boreFace.flatMap((segment) => [segmentStart(segment)[1], segmentEnd(segment)[1]]);
  return Math.max(boreRadius, ...ends);
}

/** Upright dimensions beside each other, the shortest next to the section. */
function uprightSizes(sizes: readonly UprightSize[], edge: number, side: number, put: Put): string[] {
  const sorted = [...sizes].sort((a, b) => a.to - a.from - (b.to - b.from));
  let away = FIRST;
  return sorted.map((size, i) => {
    const [low, high] = [put([0, size.from])[1], put([0, size.to])[1]];
    const at = edge + side * away;
    away += uprightWidth(textsOf(size)) + NEXT;
    // The extension lines of those that stand further out pass beside the text.
    const lines = sorted.slice(i + 1).flatMap((other) => [put([0, other.from])[1], put([0, other.to])[1]]);
    return uprightDimension(low, high, {
      ...textsOf(size),
      at,
      start: edge + side,
      shift: shiftClear((low + high) / 2, lines),
    });
  });
}

/** Least way from its place at which a text is clear of level lines. */
function shiftClear(place: number, lines: readonly number[]): number {
  const { above, below } = UPRIGHT_TEXT;
  const isClear = (shift: number) =>
    lines.every((y) => y <= place + shift - above - TEXT_CLEAR || y >= place + shift + below + TEXT_CLEAR);
  let way = 0;
  while (!isClear(-way) && !isClear(way)) way += SHIFT_STEP;
  return isClear(-way) ? -way : way;
}

/** Between a text and a line beside it, and the steps in which a clear place is looked for, mm. */
const TEXT_CLEAR = 0.3;
const SHIFT_STEP = 0.1;

/** Where upright lines stand above the section: the sides and, of a channel, the rails' inner faces. */
function railLines({ width }: ExactProfile, { rail }: SectionFigureOptions): number[] {
  return rail === undefined ? [] : [-width / 2, rail - width / 2, width / 2 - rail, width / 2];
}

function levelSizes(profile: ExactProfile, options: SectionFigureOptions, put: Put): string[] {
  const { width, boreRadius } = profile;
  const x = (w: number) => put([w, 0])[0];
  const below = put([0, boreRadius])[1];
  const above = put([0, crestOf(profile, options)])[1];
  const lower = { at: below + LEADER_GAP + ROW_TO_LINE, start: below + 1 };
  const drawn = [
    levelDimension(x(-width / 2), x(width / 2), { ...lower, label: "band width", value: width.toFixed(3) }),
  ];
  const lines = railLines(profile, options);
  const labels = ["rail", "channel", "rail"];
  labels.forEach((label, i) => {
    if (lines.length === 0) return;
    const [from, to] = [lines[i], lines[i + 1]];
    const upper = { at: above - LEADER_GAP - ROW_TO_LINE, start: above - 1 };
    drawn.push(levelDimension(x(from), x(to), { ...upper, label, value: (to - from).toFixed(3) }));
  });
  return drawn;
}

/** Radii of all arcs, each told once with how often it occurs, and the diameters. */
function leaders(profile: ExactProfile, options: SectionFigureOptions, put: Put): string[] {
  const { outline, width, boreRadius, outsideRadius } = profile;
  const arcs = outline.filter((segment): segment is Arc => segment.kind === "arc");
  const kinds: Arc[][] = [];
  for (const arc of arcs) {
    const kind = kinds.find(([one]) => Math.abs(one.radius - arc.radius) < SAME_RADIUS && isHigh(one) === isHigh(arc));
    if (kind === undefined) kinds.push([arc]);
    else kind.push(arc);
  }
  const high = (boreRadius + outsideRadius) / 2;
  function isHigh(arc: Arc): boolean {
    return middleOf(arc)[1] > (boreRadius + outsideRadius) / 2;
  }
  const marks = kinds.map((kind) => {
    const [arc] = [...kind].sort((a, b) => middleOf(b)[0] - middleOf(a)[0]);
    const times = kind.length === 1 ? "" : `${kind.length}× `;
    return { at: middleOf(arc), text: `${times}R ${arc.radius.toFixed(2)}` };
  });
  const top = outline.map(segmentBounds).reduce((best, { max }) => Math.max(best, max[1]), 0);
  const at = (w: number, r: number): Point2 => [w, r];
  const upper = [
    ...marks.filter((mark) => mark.at[1] > high),
    ...(profile.ledges ?? []).slice(1).map(({ w, radius }) => ({
      at: at(w, radius),
      text: `2× step ${(width - 2 * w).toFixed(3)}, ⌀ ${(2 * radius).toFixed(3)}`,
    })),
    { at: highest(profile, top), text: `⌀ ${(2 * outsideRadius).toFixed(3)}` },
  ];
  const lower = [
    ...marks.filter((mark) => mark.at[1] <= high),
    { at: at(-width / 12, boreOf(profile, -width / 12)), text: `bore ⌀ ${(2 * boreRadius).toFixed(3)}` },
  ];
  const [from, to] = [put([-width / 2, 0])[0] - 12, put([width / 2, 0])[0] + 12];
  const onPaper = (list: readonly { at: Point2; text: string }[]): Leader[] =>
    list.map(({ at: point, text }) => ({ at: put(point), text }));
  const lines = railLines(profile, options).map((w) => put([w, 0])[0]);
  const sides = [-width / 2, width / 2].map((w) => put([w, 0])[0]);
  return [
    ...leaderRow(onPaper(upper), { y: put([0, crestOf(profile, options)])[1] - LEADER_GAP + 1.5, lines, from, to }),
    ...leaderRow(onPaper(lower), { y: put([0, boreRadius])[1] + LEADER_GAP, lines: sides, from, to }),
  ];
}

function middleOf(arc: Arc): Point2 {
  return pointAt(arc, segmentLength(arc) / 2);
}

/** Where the outside is widest; left of the middle where it is so all along. */
function highest({ outline, rails, width }: ExactProfile, top: number): Point2 {
  if (rails !== undefined) return [(rails.faces[0][0] + rails.faces[0][1]) / 2, rails.top];
  const points = outline.flatMap((segment) => flattenSegment(segment, 1e-3));
  const level = points.filter(([, r]) => r > top - 1e-6);
  return level.length > 1 ? [-width / 6, top] : (level[0] ?? [0, top]);
}

/** Radius of the bore at w, by the nearest point of its flattened face. */
function boreOf({ boreFace, boreRadius }: ExactProfile, w: number): number {
  const points = boreFace.flatMap((segment) => [segmentStart(segment), ...flattenSegment(segment, 1e-4)]);
  const nearest = points.reduce<Point2 | undefined>(
    (best, point) => (best === undefined || Math.abs(point[0] - w) < Math.abs(best[0] - w) ? point : best),
    undefined,
  );
  return boreFace.every((segment) => segment.kind === "line") ? boreRadius : (nearest?.[1] ?? boreRadius);
}
