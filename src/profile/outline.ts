/**
 * The exact cross-section: bore, side walls and outside put together, corners rounded, the seat cut out.
 */
import { AnnuletError } from "../errors.js";
import { reverseSegment, type Segment, segmentBounds, segmentEnd, segmentLength, segmentStart } from "../math/curve.js";
import type { Point2 } from "../math/point.js";
import { type RoundedLink, roundCorners } from "../math/round-corners.js";
import { showLength } from "../units.js";
import { sketchBore } from "./bores/index.js";
import { explainMisfit } from "./explain.js";
import type { BoreSketch, Frame, OutsideLink, OutsideSketch } from "./form.js";
import { LARGEST_SIZE, LEAST_SEAT, LEAST_TOLERANCE, LEAST_WALL } from "./limits.js";
import { Misfit } from "./misfit.js";
import { sketchOutside } from "./outsides/index.js";
import type { ProfileSpec } from "./schema.js";

/** The flat tops of the two rails. */
export interface Rails {
  /** Radius of the rails' top, mm. */
  readonly top: number;
  /** From w to w of each rail's flat top, mm, the rail at low w first. */
  readonly faces: readonly [low: readonly [number, number], high: readonly [number, number]];
}

/** A cross-section as exact lines and arcs, in (w, r), mm. */
export interface ExactProfile {
  readonly width: number;
  /** As in the spec: from the bore's narrowest circle to the outside's highest nominal point. */
  readonly thickness: number;
  /** The narrowest. */
  readonly boreRadius: number;
  /** The largest r. */
  readonly outsideRadius: number;
  readonly bore: "flat" | "comfort";
  /** Closed, counter-clockwise; begins at the bore's right end and closes with the bore. */
  readonly outline: readonly Segment[];
  /** The stretch of the outside that carries the pattern, from low w to high w: reversed against the outline. */
  readonly seat: readonly Segment[];
  readonly seatLength: number;
  /** Indices into `outline`: the seat, reversed, is outline.slice(first, end). */
  readonly seatSegments: readonly [first: number, end: number];
  readonly rails: Rails | undefined;
  /** Whether w → −w leaves it as it is. */
  readonly symmetric: boolean;
}

/**
 * Lays out the exact outline. Cheap when all fits: nothing is flattened but free curves, nothing is searched.
 *
 * @param spec the profile part of a design, defaults filled in
 * @param boreRadius radius of the bore's narrowest circle, mm, above 0
 * @param tolerance mm, largest chordal deviation for curves that are neither line nor circle
 * @throws AnnuletError with the largest value that would fit: `fillet-too-large`, `rail-too-wide`, `depth-too-large`,
 *   `bevel-too-wide`, `drop-too-large`, `dip-too-large`, `rise-too-large`, `crown-too-high`, `thickness-too-small`,
 *   `bore-larger-than-outside`; `profile-not-finite` for sizes that are no numbers
 */
export function buildOutline(spec: ProfileSpec, boreRadius: number, tolerance: number): ExactProfile {
  checkSizes(spec, boreRadius, tolerance);
  try {
    return layOut(spec, boreRadius, tolerance);
  } catch (error) {
    if (!(error instanceof Misfit)) throw error;
    throw explainMisfit(error, spec, (other) => {
      try {
        layOut(other, boreRadius, tolerance);
        return true;
      } catch (problem) {
        if (problem instanceof Misfit || problem instanceof AnnuletError) return false;
        throw problem;
      }
    });
  }
}

function checkSizes(spec: ProfileSpec, boreRadius: number, tolerance: number): void {
  if (!(tolerance >= LEAST_TOLERANCE)) throw notALength("tolerance", tolerance, `${LEAST_TOLERANCE} mm or more`);
  const sizes = { "profile.width": spec.width, "profile.thickness": spec.thickness, size: boreRadius, tolerance };
  for (const [path, value] of Object.entries(sizes)) {
    if (!(value > 0 && value <= LARGEST_SIZE)) throw notALength(path, value, `above 0, at most ${LARGEST_SIZE} mm`);
  }
  for (const part of ["bore", "outside"] as const) {
    for (const [name, value] of Object.entries(spec[part])) {
      if (typeof value !== "number" || (Number.isFinite(value) && value >= 0)) continue;
      throw notALength(`profile.${part}.${name}`, value, "0 mm or more");
    }
  }
}

function notALength(path: string, value: number, allowed: string): AnnuletError {
  return new AnnuletError({
    code: "profile-not-finite",
    message: "a size of the cross-section is not a length that can be drawn",
    path,
    value,
    allowed,
  });
}

function layOut(spec: ProfileSpec, boreRadius: number, tolerance: number): ExactProfile {
  const frame: Frame = { halfWidth: spec.width / 2, boreRadius, top: boreRadius + spec.thickness, tolerance };
  const bore = sketchBore(spec.bore, frame);
  const outside = sketchOutside(spec.outside, frame);
  checkWall(spec, bore, outside);
  const chain = closeChain(bore, outside);
  const rounding = roundCorners(chain);
  if (!rounding.fits) {
    throw new Misfit("fillet-too-large", "the rounded corners do not fit between their neighbours", [
      chain[rounding.corner].field,
    ]);
  }
  const outline: Segment[] = [];
  let [first, end] = [-1, -1];
  const faces: [number, number][] = [];
  chain.forEach((link, i) => {
    const { body, fillet, filletTo } = rounding.links[i];
    const isSeat = [link.seat && body !== undefined, link.seat && fillet !== undefined && chain[filletTo].seat];
    [body, fillet].forEach((piece, k) => {
      if (isSeat[k] && first < 0) first = outline.length;
      if (piece !== undefined) outline.push(piece);
      if (isSeat[k]) end = outline.length;
    });
    if (link.rail) faces.push(faceOf(link.segment, rounding.links[i]));
  });
  const seat = outline.slice(first, end).reverse().map(reverseSegment);
  const seatLength = seat.reduce((sum, segment) => sum + segmentLength(segment), 0);
  if (!outline.every(isFinitePiece)) throw notFinite(spec);
  if (seatLength < LEAST_SEAT) {
    throw new Misfit("fillet-too-large", "the rounded corners leave nothing of the outside for a pattern", [
      ...new Set(chain.filter((link) => link.round > 0 && !link.field.startsWith("bore")).map((link) => link.field)),
    ]);
  }
  return {
    width: spec.width,
    thickness: spec.thickness,
    boreRadius,
    outsideRadius: Math.max(...outline.map((segment) => segmentBounds(segment).max[1])),
    bore: spec.bore.form,
    outline,
    seat,
    seatLength,
    seatSegments: [first, end],
    rails: faces.length === 2 ? { top: frame.top, faces: [faces[1], faces[0]] } : undefined,
    symmetric: isSymmetric(outside.links.map((link) => link.segment)),
  };
}

type ChainLink = OutsideLink & { readonly field: string };

/** The closed chain right wall, outside, left wall, bore. A wall without height is left out. */
function closeChain(bore: BoreSketch, { links, edge }: OutsideSketch): ChainLink[] {
  const [left, right] = [segmentStart(bore.link.segment), segmentEnd(bore.link.segment)];
  const last = links[links.length - 1];
  const [start, end] = [segmentStart(links[0].segment), segmentEnd(last.segment)];
  const inner = { round: bore.link.round, field: "bore.edge" };
  const outer = { round: edge, field: "outside.edge" };
  const hasRight = isApart(right, start);
  const hasLeft = isApart(end, left);
  if (edge > 0 && !(hasRight && hasLeft)) {
    const message = "where the outside meets the bore without a side wall, the only edge is the bore's";
    throw new Misfit("fillet-too-large", message, ["outside.edge"]);
  }
  const chain: ChainLink[] = [];
  if (hasRight) chain.push({ segment: { kind: "line", from: right, to: start }, ...outer });
  for (const link of links.slice(0, -1)) chain.push({ ...link, field: `outside.${link.field ?? "edge"}` });
  chain.push({ ...last, ...(hasLeft ? outer : inner) });
  if (hasLeft) chain.push({ segment: { kind: "line", from: end, to: left }, ...inner });
  chain.push({ segment: bore.link.segment, ...inner });
  return chain;
}

/** Points nearer than this are one, mm: rounding. */
const SAME_POINT = 1e-9;

function isApart(a: Point2, b: Point2): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) > SAME_POINT;
}

/**
 * Metal between the nominal outside and the bore, at the ends and the middle of every piece: with both about w = 0, the
 * difference of two arcs is least there. A free outside may run down to the bore at its ends, so it must only stay above.
 */
function checkWall(spec: ProfileSpec, bore: BoreSketch, outside: OutsideSketch): void {
  const points = outside.links.flatMap(({ segment }) => [segmentStart(segment), middleOf(segment)]);
  points.push(segmentEnd(outside.links[outside.links.length - 1].segment));
  const walls = points.map(([w, r]) => r - bore.radiusAt(w));
  const least = Math.min(...walls);
  // Rounding must not turn away a wall of exactly the least.
  if (outside.drawnAs === undefined) {
    if (least >= LEAST_WALL - SAME_POINT) return;
  } else if (Math.min(...walls.slice(1, -1)) > 0 && least >= -SAME_POINT) {
    return;
  }
  const sizeOf = (part: "outside" | "bore", name: string | undefined) =>
    name === undefined ? [] : [{ field: `${part}.${name}`, value: Number(Reflect.get(spec[part], name)) }];
  const fields = [...sizeOf("outside", outside.thins), ...sizeOf("bore", bore.thins)]
    .sort((a, b) => b.value - a.value)
    .map(({ field }) => field);
  if (outside.drawnAs !== undefined) {
    const message = "the outside reaches into the bore";
    throw new Misfit("bore-larger-than-outside", message, [...fields, `outside.${outside.drawnAs}`]);
  }
  const met = least > 0 ? `comes within ${showLength(least)} of the outside` : "reaches the outside";
  const message = `the bore ${met}; the model needs ${showLength(LEAST_WALL)} of metal between them`;
  throw new Misfit("thickness-too-small", message, [...fields, "thickness"]);
}

function middleOf(segment: Segment): Point2 {
  if (segment.kind === "line") {
    return [(segment.from[0] + segment.to[0]) / 2, (segment.from[1] + segment.to[1]) / 2];
  }
  const angle = segment.start + segment.sweep / 2;
  return [segment.centre[0] + segment.radius * Math.cos(angle), segment.centre[1] + segment.radius * Math.sin(angle)];
}

/** w-range of what the fillets leave of a rail's top, low w first. */
function faceOf(segment: Segment, { body, trims }: RoundedLink): [number, number] {
  if (body !== undefined) return [segmentEnd(body)[0], segmentStart(body)[0]];
  const w = segmentStart(segment)[0] - trims[0];
  return [w, w];
}

/** Whether the outside, mirrored and run backwards, is itself. */
function isSymmetric(segments: readonly Segment[]): boolean {
  return segments.every((segment, i) => {
    const twin = segments[segments.length - 1 - i];
    const pairs = [
      [segmentStart(segment), segmentEnd(twin)],
      [middleOf(segment), middleOf(twin)],
    ];
    return pairs.every(([[w, r], [mw, mr]]) => !isApart([w, r], [-mw, mr]));
  });
}

function isFinitePiece(segment: Segment): boolean {
  return [...segmentStart(segment), ...segmentEnd(segment)].every(Number.isFinite);
}

function notFinite(spec: ProfileSpec): AnnuletError {
  return new AnnuletError({
    code: "profile-not-finite",
    message: "the cross-section's sizes do not give finite coordinates",
    path: "profile",
    value: spec,
    hint: "every length must be a number of mm",
  });
}
