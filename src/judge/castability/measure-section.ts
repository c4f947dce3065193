/**
 * What is measured on the band's cross-section, at every angle at which a band that tapers is looked at: its sides, its
 * heaviest place, the radii of its corners. Exact curves, so no figure depends on the mesh.
 */
import type { Profile } from "../../band/profile/profile.js";
import { pointAt, type Segment, segmentLength, segmentStart, tangentAt } from "../../base/math/curve.js";
import { growCircle } from "../../base/math/empty-circle.js";
import type { Point2, Point3 } from "../../base/math/point.js";
import { radians, TURN } from "../../base/units.js";
import { distance } from "../wall-rays.js";
import type { JudgedPiece, Measured } from "./piece.js";

export interface SectionMeasures {
  readonly side: Measured | undefined;
  readonly heavy: Measured | undefined;
  readonly corner: Measured | undefined;
  readonly edge: Measured | undefined;
}

/** A figure at a place of the section, (w, r) in mm. */
interface Found {
  readonly figure: number;
  readonly at: Point2;
}

/** Places that are told of each. */
const PLACES = 10;

/** mm in from a side where its height is measured: what finishing may take off a face (a casting house: up to 0.1). */
const SIDE_IN = 0.1;

export function measureSection({ profile }: JudgedPiece): SectionMeasures {
  const looks = profile.revolved ? [TURN / 4] : profile.looks;
  const worst = (of: (section: Profile) => Found[], better: "more" | "less"): Measured | undefined => {
    const order = better === "more" ? 1 : -1;
    const all = looks
      .flatMap((angle) => of(profile.sectionAt(angle)).map((found) => ({ ...found, angle })))
      .sort((a, b) => order * (a.figure - b.figure));
    if (all.length === 0) return undefined;
    const places: Point3[] = [];
    for (const { figure, at, angle } of all) {
      const place = bent(at, angle);
      if (order * (figure - all[0].figure) >= ALIKE || places.length >= PLACES) break;
      if (places.every((other) => distance(other, place) > APART)) places.push(place);
    }
    return { figure: all[0].figure, places: places.map((space) => ({ space })) };
  };
  const bends = (inward: boolean) => (section: Profile) => bendsOf(section, inward);
  return {
    side: worst(sidesOf, "more"),
    heavy: worst(heaviest, "less"),
    corner: worst(bends(true), "more"),
    edge: worst(bends(false), "more"),
  };
}

/** Figures nearer than this are told as one, and places nearer than that, mm. */
const ALIKE = 1e-3;
const APART = 0.2;

function bent([w, r]: Point2, angle: number): Point3 {
  return [r * Math.cos(angle), r * Math.sin(angle), w];
}

/** The band's height a little in from each side. */
function sidesOf({ polyline }: Profile): Found[] {
  const widths = polyline.map(([w]) => w);
  return [Math.min(...widths) + SIDE_IN, Math.max(...widths) - SIDE_IN].flatMap((w) => chordsAt(polyline, w));
}

/** How far the section reaches along a line straight out from the axis, for each span of it that lies inside, lowest first. */
export function chordsAt(polyline: readonly Point2[], w: number): Found[] {
  const crossings = crossingsAt(polyline, w);
  return crossings.flatMap((low, i): Found[] => {
    if (i % 2 === 1 || i + 1 >= crossings.length) return [];
    const high = crossings[i + 1];
    return [{ figure: high - low, at: [w, (low + high) / 2] }];
  });
}

/** The radii at which a line straight out from the axis goes in and out of the section in turn, from within. */
export function crossingsAt(polyline: readonly Point2[], w: number): number[] {
  const crossings: number[] = [];
  let from = polyline[polyline.length - 1];
  for (const to of polyline) {
    if (from[0] < w !== to[0] < w) crossings.push(from[1] + ((w - from[0]) / (to[0] - from[0])) * (to[1] - from[1]));
    from = to;
  }
  return crossings.sort((a, b) => a - b);
}

/** Places across the band from which the largest ball is looked for. */
const STARTS = 9;

/** The largest circle in the section. */
function heaviest({ polyline }: Profile): Found[] {
  const segments = Float64Array.from(
    polyline.flatMap((point, i) => [...point, ...polyline[(i + 1) % polyline.length]]),
  );
  const widths = polyline.map(([w]) => w);
  const [low, high] = [Math.min(...widths), Math.max(...widths)];
  const circles = Array.from({ length: STARTS }, (_, i) => low + ((i + 1) / (STARTS + 1)) * (high - low))
    .flatMap((w) => chordsAt(polyline, w))
    .map(({ at, figure }) => growCircle(segments, at, figure, high - low));
  return circles.map(({ centre, radius }) => ({ figure: 2 * radius, at: centre }));
}

/** What bends by less is no corner, radians: curves that are fitted by arcs meet so. */
const LEAST_BEND = radians(10);

/** Arcs that are larger are faces and no rounded corners, mm: over any limit. Chosen. */
const LARGEST = 1;

/** The radii at which the outline bends, 0 where it does so sharply; the outline runs counter-clockwise. */
function bendsOf({ outline }: Profile, inward: boolean): Found[] {
  const way = inward ? -1 : 1;
  return outline.flatMap((segment, i): Found[] => {
    const found: Found[] = [];
    const turn = way * turnAt(outline[(i + outline.length - 1) % outline.length], segment);
    if (turn > LEAST_BEND) found.push({ figure: 0, at: segmentStart(segment) });
    if (segment.kind === "arc" && way * segment.sweep > LEAST_BEND && segment.radius <= LARGEST) {
      found.push({ figure: segment.radius, at: pointAt(segment, segmentLength(segment) / 2) });
    }
    return found;
  });
}

/** By how much one curve turns into the next, radians, left above 0. */
function turnAt(before: Segment, after: Segment): number {
  const [ax, ay] = tangentAt(before, segmentLength(before));
  const [bx, by] = tangentAt(after, 0);
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}
