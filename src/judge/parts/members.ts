/**
 * What a ring is made of, in the order of work: the band, the bodies of the pattern, beads, marks. Each tells whether a place
 * lies in it, so that a face of the ring is known by whose edge it is.
 */
import type { Band } from "../../band/band.js";
import type { BandSurface } from "../../band/surface/surface.js";
import type { Point3 } from "../../base/math/point.js";
import { encloses } from "../../base/math/polygon.js";
import type { PlacedRuns, Run } from "../../beads/place-runs.js";
import type { Mark } from "../../marks/mark.js";
import type { Marks } from "../../marks/marks.js";
import type { Pattern } from "../../pattern/laid-out.js";
import type { FlatBody } from "../../relief/flat-body.js";
import { heightIndexOf, heightsAt } from "../proof/intent.js";
import { footAt } from "../proof/walk-column.js";
import { type NamedRegion, periodOf, regionsOf } from "./body-regions.js";

/** What the parts of a ring are told from. */
export interface PartSource {
  readonly profile: Band;
  readonly wrap: BandSurface;
  readonly pattern: Pattern;
  readonly marks: Marks;
  readonly beads: PlacedRuns;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
}

/** One of them. */
export interface Member {
  /** Which part of the document it is at a place in it; undefined for the band, whose parts are told by the section. */
  readonly partAt: ((place: Point3) => NamedRegion) | undefined;
  /** Whether it is added, or taken away. */
  readonly op: "add" | "cut";
  /** Whether a place lies in it; of what is cut, whether it is taken away there. */
  readonly holds: (place: Point3) => boolean;
}

/** All of a ring, each after what it is worked upon. */
export function membersOf(source: PartSource): Member[] {
  const { wrap, pattern, beads, marks, tolerance } = source;
  let sunk = 0;
  const bodies = pattern.bodies.map((body): Member => {
    if (body.mode === "sunk") sunk = Math.max(sunk, body.height);
    return bodyMember(body, wrap, sunk + tolerance);
  });
  return [bandMember(source.profile), ...bodies, ...beads.runs.map(runMember), ...marks.marks.map(markMember)];
}

function bandMember(profile: Band): Member {
  const holds = ([x, y, z]: Point3): boolean => {
    const { polyline } = profile.sectionAt(Math.atan2(y, x));
    return encloses(polyline, [z, Math.hypot(x, y)]);
  };
  return { partAt: undefined, op: "add", holds };
}

/** @param foot how far below the seat what is raised may have a face, mm */
function bodyMember(body: FlatBody, wrap: BandSurface, foot: number): Member {
  const { mode } = body;
  const index = heightIndexOf(body);
  const period = periodOf(body, wrap);
  const regionAt = regionsOf(body, wrap);
  const alongRadius = mode === "pierced" || body.upright;
  const flat = (place: Point3): Point3 => (alongRadius ? uprightPlace(wrap, place) : wrap.inverse(...place));
  const holds = (place: Point3): boolean => {
    const [u, v, h] = flat(place);
    const heights = heightsAt(index, period, u, v, body);
    if (heights === undefined) return false;
    if (mode === "pierced") return true;
    const height = (heights.low + heights.high) / 2;
    return mode === "raised" ? h >= -foot && h <= height : h >= -height;
  };
  const partAt = (place: Point3): NamedRegion => {
    const [u, v] = flat(place);
    return regionAt(u, v);
  };
  return { partAt, op: mode === "raised" ? "add" : "cut", holds };
}

/** The place on the seat from which a height along the radius is counted. */
function uprightPlace(wrap: BandSurface, [x, y, z]: Point3): Point3 {
  const [u] = wrap.inverse(x, y, z);
  const line = wrap.lineAt(wrap.angleAt(u));
  const v = footAt(line, z);
  return [u, v, (Math.hypot(x, y) - line.point(v, 0)[1]) * line.normal(v)[1]];
}

function runMember({ path, run, beads }: Run): Member {
  const holds = ([x, y, z]: Point3): boolean =>
    beads.some(({ centre, radius }) => Math.hypot(x - centre[0], y - centre[1], z - centre[2]) <= radius);
  return { partAt: () => ({ path, names: [run] }), op: "add", holds };
}

function markMember({ surface: { wrap }, body, box }: Mark): Member {
  const index = heightIndexOf(body);
  const middle = (box.u[0] + box.u[1]) / 2;
  const holds = (place: Point3): boolean => {
    const [u, v, h] = wrap.inverse(...place);
    const home = u - wrap.round * Math.round((u - middle) / wrap.round);
    const heights = heightsAt(index, wrap.round, home, v, body);
    if (heights === undefined) return false;
    const height = (heights.low + heights.high) / 2;
    return body.mode === "raised" ? h >= -FOOT && h <= height : h >= -height && h < AIR;
  };
  const mark = { path: body.path, names: [] };
  return { partAt: () => mark, op: body.mode === "raised" ? "add" : "cut", holds };
}

/** Marks are looked at so far below and above their surface, mm: more than any mesh is off it, less than any wall is thick. */
const FOOT = 0.05;
const AIR = 0.5;
