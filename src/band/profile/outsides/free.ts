/**
 * An outside drawn freely, as SVG path data or as points, in (w, height above the bore's narrowest circle), mm, y up.
 *
 * The drawing runs from −w to +w, centred, and is stretched along w to the band's width, so that the width can be solved
 * for; heights stay. Lines and unstretched circular arcs are kept exactly; all else becomes circular arcs that join
 * without a corner, within the tolerance. Corners drawn as such stay.
 */
import { AnnuletError } from "../../../base/errors.js";
import { fitBiarcs } from "../../../base/math/biarc.js";
import {
  reverseSegment,
  type Segment,
  segmentBounds,
  segmentEnd,
  segmentLength,
  segmentStart,
  tangentAt,
} from "../../../base/math/curve.js";
import { type PathSegment, readPathData, translatePath } from "../../../base/math/path-data.js";
import type { Point2 } from "../../../base/math/point.js";
import { type AxisMap, smoothPiece } from "../../../base/math/smooth-piece.js";
import { showLength } from "../../../base/units.js";
import type { FreeSpec } from "../../../design/profile/outsides/free.js";
import type { Frame, OutsideForm, OutsideLink } from "../form.js";
import { splitAtW } from "../split.js";

/** How far the drawing's highest point may be from the thickness, and its ends from centred, mm; a chosen limit. */
const DRAWING_SLACK = 0.01;

/** A stretch nearer to 1 than this is none: rounding. */
const NO_STRETCH = 1e-12;

/** A joint that turns by no more than this, as drawn, is meant to be smooth, radians: rounded numbers. Chosen. */
const SMOOTH_JOINT = 0.01;

/** Tangents whose sine is below this are one, without unit: rounding. */
const SAME_TANGENT = 1e-12;

/** How far the drawing may reach past its ends, mm: rounding. */
const OVERHANG_SLACK = 1e-9;

export const free: OutsideForm<FreeSpec> = {
  finished: "seat",
  // Heights are drawn above the bore, which is nearer to the axis before it is finished.
  grown({ path, points, ...rest }, { bore, outside }) {
    const by = bore + outside;
    return {
      ...rest,
      ...(path === undefined ? {} : { path: translatePath(path, 0, by) }),
      ...(points === undefined ? {} : { points: points.map(([w, h]): [number, number] => [w, h + by]) }),
    };
  },
  sketch(spec, frame) {
    const drawnAs = spec.path === undefined ? "points" : "path";
    const drawing = readDrawing(spec);
    const [from, to] = [drawing[0].start[0], drawing[drawing.length - 1].end[0]];
    if (Math.abs(from + to) > DRAWING_SLACK || to <= from) {
      throw drawingError(
        spec,
        "profile-off-centre",
        `the drawing runs from w = ${showLength(from)} to ${showLength(to)}`,
        {
          allowed: "from −w to +w, the same on both sides",
          hint: "draw it from left to right with w = 0 in the middle",
        },
      );
    }
    const stretch = (2 * frame.halfWidth) / (to - from);
    const middle = (from + to) / 2;
    const map: AxisMap = { scale: [stretch, 1], shift: [-middle * stretch, frame.boreRadius] };
    const tangents = shareTangents(drawing);
    const links = drawing.flatMap((piece, i) => {
      const segments = toSegments(piece, tangents[i], map, frame.tolerance);
      const next = drawing[i + 1];
      const runsOn = next !== undefined && isSmoothJoint(piece, next);
      return segments.map((segment, k) => ({ segment, round: 0, runsOn: k + 1 < segments.length || runsOn }));
    });
    checkExtent(spec, links, frame);
    const [low, high] = (spec.seat ?? [from, to]).map((w) => (w - middle) * stretch);
    return { links: markSeat(spec, links.reverse().map(turnBack), low, high), edge: spec.edge, drawnAs };
  },
};

/** A piece of the drawing with its ends and its unit tangents there, as drawn. */
interface Drawn {
  readonly start: Point2;
  readonly end: Point2;
  readonly tangents: readonly [Point2, Point2];
  readonly segment: PathSegment;
}

function readDrawing(spec: FreeSpec): Drawn[] {
  if (spec.points !== undefined) {
    const { points } = spec;
    return points.slice(1).map((to, i) => toDrawn({ kind: "line", from: points[i], to }));
  }
  const subpaths = readPathData(spec.path ?? "", "profile.outside.path");
  if (subpaths.length !== 1 || subpaths[0].closed) {
    throw drawingError(spec, "path-malformed", "the outside is not one open run", {
      allowed: "one M, then L, H, V, C, S, Q, T or A; no Z",
      hint: "draw only the outside: bore and side walls are added",
    });
  }
  return subpaths[0].segments.map(toDrawn);
}

/** The map that leaves all as it is. */
const AS_DRAWN: AxisMap = { scale: [1, 1], shift: [0, 0] };

function toDrawn(segment: PathSegment): Drawn {
  if (segment.kind === "cubic" || segment.kind === "ellipse") {
    const { start, end, tangents } = smoothPiece(segment, AS_DRAWN);
    return { start, end, tangents, segment };
  }
  const tangents = [tangentAt(segment, 0), tangentAt(segment, segmentLength(segment))] as const;
  return { start: segmentStart(segment), end: segmentEnd(segment), tangents, segment };
}

/** The end tangents of each piece, as drawn: its own, or at a joint that is meant to be smooth the one they share. */
function shareTangents(drawing: readonly Drawn[]): (readonly [Point2, Point2])[] {
  const shared = drawing.map(({ tangents: [start, end] }): [Point2, Point2] => [start, end]);
  for (let i = 0; i + 1 < drawing.length; i++) {
    if (!isSmoothJoint(drawing[i], drawing[i + 1])) continue;
    const [a, b] = [drawing[i].tangents[1], drawing[i + 1].tangents[0]];
    const lead = RANKS[drawing[i].segment.kind] - RANKS[drawing[i + 1].segment.kind];
    const tangent: Point2 = lead > 0 ? a : lead < 0 ? b : unit([a[0] + b[0], a[1] + b[1]]);
    shared[i][1] = tangent;
    shared[i + 1][0] = tangent;
  }
  return shared;
}

/** Whose tangent a smooth joint takes: a line's before an arc's before another curve's; among equals the mean. */
const RANKS = { line: 2, arc: 1, ellipse: 0, cubic: 0 } as const;

/** Two lines cannot be made tangent. */
function isSmoothJoint(before: Drawn, after: Drawn): boolean {
  const [[ax, ay], [bx, by]] = [before.tangents[1], after.tangents[0]];
  const turn = Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
  return turn <= SMOOTH_JOINT && !(before.segment.kind === "line" && after.segment.kind === "line");
}

/** Lines stay lines and what is a circle an arc; other curves become arcs that join without a corner. */
function toSegments(
  { segment, tangents: own }: Drawn,
  tangents: readonly [Point2, Point2],
  map: AxisMap,
  tolerance: number,
): Segment[] {
  const place = ([x, y]: Point2): Point2 => [x * map.scale[0] + map.shift[0], y + map.shift[1]];
  if (segment.kind === "line") return [{ kind: "line", from: place(segment.from), to: place(segment.to) }];
  const [stretch] = map.scale;
  const isItsOwn = own.every(([x, y], i) => Math.abs(x * tangents[i][1] - y * tangents[i][0]) <= SAME_TANGENT);
  if (segment.kind === "arc" && isItsOwn && Math.abs(stretch - 1) < NO_STRETCH) {
    return [{ ...segment, centre: place(segment.centre) }];
  }
  // Stretches half a power of two away: the pieces then do not change with every width a solver tries.
  const near = 2 ** Math.round(Math.log2(stretch));
  return fitBiarcs(smoothPiece(segment, map), {
    tolerance,
    tangents: [unit([tangents[0][0] * stretch, tangents[0][1]]), unit([tangents[1][0] * stretch, tangents[1][1]])],
    alike: [near * Math.SQRT1_2, near * Math.SQRT2].map((scale) => smoothPiece(segment, { ...map, scale: [scale, 1] })),
    path: "profile.outside.path",
  });
}

function unit([x, y]: Point2): Point2 {
  const length = Math.hypot(x, y);
  return [x / length, y / length];
}

/** Links run the other way; `runsOn` then speaks of the joint with the link that was before. */
function turnBack(link: OutsideLink, i: number, reversed: readonly OutsideLink[]): OutsideLink {
  return { ...link, segment: reverseSegment(link.segment), runsOn: reversed[i + 1]?.runsOn ?? false };
}

function checkExtent(spec: FreeSpec, links: readonly OutsideLink[], frame: Frame): void {
  const boxes = links.map(({ segment }) => segmentBounds(segment));
  const widest = Math.max(...boxes.map(({ min, max }) => Math.max(-min[0], max[0])));
  if (widest > frame.halfWidth + OVERHANG_SLACK) {
    throw drawingError(spec, "profile-outside-width", `the drawing reaches out to w = ${showLength(widest)}`, {
      allowed: `at most ${showLength(frame.halfWidth)} on either side, where it begins and ends`,
      hint: "draw no overhang past the ends",
    });
  }
  const highest = Math.max(...boxes.map(({ max }) => max[1])) - frame.boreRadius;
  const thickness = frame.top - frame.boreRadius;
  if (Math.abs(highest - thickness) > Math.max(DRAWING_SLACK, frame.tolerance)) {
    throw new AnnuletError({
      code: "thickness-differs",
      message: `the drawing's highest point is ${showLength(highest)} above the bore`,
      path: "profile.thickness",
      value: thickness,
      allowed: showLength(highest),
      hint: "set the thickness to the drawing's highest point",
    });
  }
}

/** Cuts the links, which run from high to low w, where the seat begins and ends, and marks those between. */
function markSeat(spec: FreeSpec, links: readonly OutsideLink[], low: number, high: number): OutsideLink[] {
  if (spec.seat === undefined) return links.map((link) => ({ ...link, seat: true }));
  const fail = () =>
    new AnnuletError({
      code: "seat-off-profile",
      message: "the seat is not a stretch of the outside",
      path: "profile.outside.seat",
      value: spec.seat,
      allowed: "[w0, w1] with w0 below w1, both on the drawing",
    });
  if (low >= high) throw fail();
  const result: OutsideLink[] = [];
  let state: "before" | "in" | "after" = "before";
  for (const link of links) {
    let rest: OutsideLink | undefined = link;
    while (rest !== undefined && state !== "after") {
      const cut: readonly [Segment | undefined, Segment | undefined] | undefined = splitAtW(
        rest.segment,
        state === "before" ? high : low,
      );
      if (cut === undefined) break;
      const [head, tail] = cut;
      if (head !== undefined) result.push({ ...rest, segment: head, seat: state === "in" });
      rest = tail === undefined ? undefined : { ...rest, segment: tail };
      state = state === "before" ? "in" : "after";
    }
    if (rest !== undefined) result.push({ ...rest, seat: state === "in" });
  }
  if (state !== "after") throw fail();
  // A fillet may not pass over the seat's ends.
  return result.map((link, i) => ({ ...link, runsOn: link.runsOn === true && result[i + 1]?.seat === link.seat }));
}

function drawingError(
  spec: FreeSpec,
  code: string,
  message: string,
  rest: { readonly allowed: string; readonly hint: string },
): AnnuletError {
  const drawnAs = spec.path === undefined ? "points" : "path";
  return new AnnuletError({ code, message, path: `profile.outside.${drawnAs}`, value: spec[drawnAs], ...rest });
}
