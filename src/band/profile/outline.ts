/**
 * The exact cross-section: bore, side walls and outside put together, corners rounded, the seat cut out.
 */
import { AnnuletError } from "../../base/errors.js";
import {
  pointAt,
  type Segment,
  segmentBounds,
  segmentEnd,
  segmentLength,
  segmentStart,
  tangentAt,
} from "../../base/math/curve.js";
import { type RoundedLink, roundCorners } from "../../base/math/round-corners.js";
import type { ProfileSpec } from "../../design/profile/profile.js";
import { sketchBore } from "./bores/index.js";
import { checkSizes } from "./check-sizes.js";
import { checkWall } from "./check-wall.js";
import { closeChain, isApart } from "./close-chain.js";
import { cutSteps } from "./cut-steps.js";
import { explainMisfit } from "./explain-misfit.js";
import type { Frame } from "./form.js";
import { LEAST_SEAT, SAME_POINT } from "./least-sizes.js";
import { Misfit } from "./misfit.js";
import { sketchOutside } from "./outsides/index.js";
import { seatOf } from "./seat.js";

/** The two rails: their flat tops, and how they rise from the seat. */
export interface Rails {
  /** Radius of the rails' top, mm. */
  readonly top: number;
  /** From w to w of each rail's flat top, mm, the rail at low w first. */
  readonly faces: readonly [low: readonly [number, number], high: readonly [number, number]];
  /** From the seat's edge, straight on, to the rail's wall, mm: the width of the fillet between them; 0 without one. */
  readonly root: number;
  /** From there to the band's side, or to the wall of a step cut along it, mm. */
  readonly width: number;
}

/** A ledge: the middle of its whole width, and its radius, mm. */
export interface Ledge {
  readonly w: number;
  readonly radius: number;
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
  /** The span of the outside that carries the pattern, from low w to high w: reversed against the outline. */
  readonly seat: readonly Segment[];
  readonly seatLength: number;
  /** Indices into `outline`: the seat, reversed, is outline.slice(first, end). */
  readonly seatSegments: readonly [first: number, end: number];
  readonly rails: Rails | undefined;
  /** The ledges of a step along its edges, that at low w first; undefined where there is none. */
  readonly ledges: readonly [low: Ledge, high: Ledge] | undefined;
  /** What the rounded edges leave of the bore, from low w to high w; empty where they leave nothing. */
  readonly boreFace: readonly Segment[];
  /** Whether w → −w leaves it as it is. */
  readonly symmetric: boolean;
}

/**
 * Lays out the exact outline. Cheap when all fits: free curves are fitted by arcs, nothing is searched.
 *
 * @param spec the profile part of a design, defaults filled in
 * @param boreRadius radius of the bore's narrowest circle, mm, above 0
 * @param tolerance mm, how far the arcs may lie from curves that are neither line nor circle
 * @throws AnnuletError with the largest value that would fit: `fillet-too-large`, `rail-too-wide`, `depth-too-large`,
 *   `bevel-too-wide`, `drop-too-large`, `dip-too-large`, `rise-too-large`, `crown-too-high`, `thickness-too-small`,
 *   `bore-larger-than-outside`, `seat-too-narrow`; `profile-not-finite` for sizes that are no numbers
 */
export function buildOutline(spec: ProfileSpec, boreRadius: number, tolerance: number): ExactProfile {
  checkSizes(spec, boreRadius, tolerance);
  try {
    return drawOutline(spec, boreRadius, tolerance);
  } catch (error) {
    if (!(error instanceof Misfit)) throw error;
    throw explainMisfit(error, spec, (other) => {
      try {
        drawOutline(other, boreRadius, tolerance);
        return true;
      } catch (problem) {
        if (problem instanceof Misfit || problem instanceof AnnuletError) return false;
        throw problem;
      }
    });
  }
}

function drawOutline(spec: ProfileSpec, boreRadius: number, tolerance: number): ExactProfile {
  const frame: Frame = { halfWidth: spec.width / 2, boreRadius, top: boreRadius + spec.thickness, tolerance };
  const bore = sketchBore(spec.bore, frame);
  const form = sketchOutside(spec.outside, frame);
  const outside = spec.step === undefined ? form : cutSteps(form, spec.step, frame);
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
  const ledges: Ledge[] = [];
  chain.forEach((link, i) => {
    const { body, fillet, filletTo } = rounding.links[i];
    const isSeat = [link.seat && body !== undefined, link.seat && fillet !== undefined && chain[filletTo].seat];
    [body, fillet].forEach((piece, k) => {
      if (isSeat[k] && first < 0) first = outline.length;
      if (piece !== undefined) outline.push(piece);
      if (isSeat[k]) end = outline.length;
    });
    if (link.rail) faces.push(faceOf(link.segment, rounding.links[i]));
    if (link.ledge) ledges.push(ledgeOf(link.segment));
  });
  // The chain closes with the bore.
  const boreFace = rounding.links[chain.length - 1].body;
  const seat = seatOf(outline, [first, end]);
  const seatLength = seat.reduce((sum, segment) => sum + segmentLength(segment), 0);
  if (!outline.every(isFinitePiece)) throw notFinite(spec);
  if (seatLength < LEAST_SEAT - SAME_POINT) {
    const rounded = chain.filter((link) => link.round > 0 && !link.field.startsWith("bore")).map((link) => link.field);
    const [code, why] =
      rounded.length > 0
        ? ["fillet-too-large", "the rounded corners leave nothing of the outside for a pattern"]
        : ["seat-too-narrow", "the band leaves no room for a pattern"];
    throw new Misfit(code, why, [...new Set(rounded), "width"]);
  }
  const step = spec.step?.width ?? 0;
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
    rails: faces.length === 2 ? railsOf(faces[1], faces[0], { frame, seat, after: outline[end], step }) : undefined,
    ledges: ledges.length === 2 ? [ledges[1], ledges[0]] : undefined,
    boreFace: boreFace === undefined ? [] : [boreFace],
    symmetric: isSymmetric(outside.links.map((link) => link.segment)),
  };
}

function ledgeOf(segment: Segment): Ledge {
  const [[from, radius], [to]] = [segmentStart(segment), segmentEnd(segment)];
  return { w: (from + to) / 2, radius };
}

function railsOf(
  low: readonly [number, number],
  high: readonly [number, number],
  {
    frame,
    seat,
    after,
    step,
  }: { readonly frame: Frame; readonly seat: readonly Segment[]; readonly after: Segment; readonly step: number },
): Rails {
  // Against the outline, the seat begins where what follows it begins: a fillet that ends on the wall, or the wall.
  const [wall] = segmentEnd(after);
  const [along] = tangentAt(seat[0], 0);
  const root = (segmentStart(seat[0])[0] - wall) / along;
  return { top: frame.top, faces: [low, high], root, width: frame.halfWidth - step + wall };
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
      [pointAt(segment, segmentLength(segment) / 2), pointAt(twin, segmentLength(twin) / 2)],
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
