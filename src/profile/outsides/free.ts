/**
 * An outside drawn freely, as SVG path data or as points, in (w, height above the bore's narrowest circle), mm, y up.
 *
 * The drawing runs from −w to +w, centred, and is stretched along w to the band's width, so that the width can be solved
 * for; heights stay. Unstretched lines and circular arcs are kept exactly, all else becomes chords.
 */
import { z } from "zod";
import { AnnuletError } from "../../errors.js";
import { reverseSegment, type Segment, segmentBounds, segmentEnd, segmentStart } from "../../math/curve.js";
import { ellipsePointAt } from "../../math/elliptic-arc.js";
import { flattenPathSegment, type PathSegment, readPathData } from "../../math/path-data.js";
import type { Point2 } from "../../math/point.js";
import { showLength } from "../../units.js";
import type { Frame, OutsideForm, OutsideLink } from "../form.js";
import { splitAtW } from "../split.js";

/** A drawing's ends may meet the bore, where the bore's edge is the only one: so sharp. */
export const FREE_DEFAULTS = { edge: 0 } as const;

const point = z.tuple([z.number(), z.number()]);

export const freeSchema = z
  .strictObject({
    form: z.literal("free"),
    path: z
      .string()
      .optional()
      .describe(
        "SVG path data in (w, height above the bore's narrowest circle), mm, y up: one open run from −w to +w, centred, stretched along w to the band's width. Give this or points.",
      ),
    points: z
      .array(point)
      .min(2)
      .optional()
      .describe("The same as a list of [w, height] in mm, joined by straight lines. Give this or path."),
    seat: point
      .optional()
      .describe("From w to w of the stretch that carries the pattern, mm, as drawn; default all between the edges."),
    edge: z
      .number()
      .min(0)
      .default(FREE_DEFAULTS.edge)
      .describe("Radius of the corners with the side walls, mm, 0 (sharp) or more; default 0."),
  })
  .refine((spec) => (spec.path === undefined) !== (spec.points === undefined), "give either path or points")
  .describe("An outside drawn freely; its highest point is the band's thickness.");

export type FreeSpec = z.output<typeof freeSchema>;

/** How far the drawing's highest point may be from the thickness, and its ends from centred, mm; a chosen limit. */
const DRAWING_SLACK = 0.01;

/** A stretch nearer to 1 than this is none: rounding. */
const NO_STRETCH = 1e-12;

/** How far the drawing may reach past its ends, mm: rounding. */
const OVERHANG_SLACK = 1e-9;

export const free: OutsideForm<FreeSpec> = {
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
    const place = ([w, h]: Point2): Point2 => [(w - (from + to) / 2) * stretch, h + frame.boreRadius];
    const links = drawing.flatMap((piece) => toLinks(piece, stretch, place, frame));
    checkExtent(spec, links, frame);
    const [low, high] = (spec.seat ?? [from, to]).map((w) => place([w, 0])[0]);
    return { links: markSeat(spec, links.reverse().map(turnBack), low, high), edge: spec.edge, drawnAs };
  },
};

/** A piece of the drawing with its ends, and whether it was drawn as a curve. */
interface Drawn {
  readonly start: Point2;
  readonly end: Point2;
  readonly segment: PathSegment;
}

function readDrawing(spec: FreeSpec): Drawn[] {
  if (spec.points !== undefined) {
    const { points } = spec;
    return points.slice(1).map((end, i) => ({
      start: points[i],
      end,
      segment: { kind: "line", from: points[i], to: end },
    }));
  }
  const subpaths = readPathData(spec.path ?? "", "profile.outside.path");
  if (subpaths.length !== 1 || subpaths[0].closed) {
    throw drawingError(spec, "path-malformed", "the outside is not one open run", {
      allowed: "one M, then L, H, V, C, S, Q, T or A; no Z",
      hint: "draw only the outside: bore and side walls are added",
    });
  }
  return subpaths[0].segments.map((segment) => ({ ...endsOf(segment), segment }));
}

function endsOf(segment: PathSegment): { readonly start: Point2; readonly end: Point2 } {
  switch (segment.kind) {
    case "cubic":
      return { start: segment.points[0], end: segment.points[3] };
    case "ellipse":
      return {
        start: ellipsePointAt(segment, segment.start),
        end: ellipsePointAt(segment, segment.start + segment.sweep),
      };
    default:
      return { start: segmentStart(segment), end: segmentEnd(segment) };
  }
}

/** Exact pieces stay exact; curves become chords that a fillet may pass over. */
function toLinks(piece: Drawn, stretch: number, place: (p: Point2) => Point2, frame: Frame): OutsideLink[] {
  const { segment } = piece;
  if (segment.kind === "arc" && Math.abs(stretch - 1) < NO_STRETCH) {
    return [{ segment: { ...segment, centre: place(segment.centre) }, round: 0 }];
  }
  // A power of two, so that the number of chords does not change with every width a solver tries.
  const finer = 2 ** Math.ceil(Math.log2(Math.max(stretch, 1)));
  const points = [piece.start, ...flattenPathSegment(segment, frame.tolerance / finer, "profile.outside.path")].map(
    place,
  );
  return points.slice(1).map((to, i) => ({
    segment: { kind: "line", from: points[i], to },
    round: 0,
    runsOn: i < points.length - 2,
  }));
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
