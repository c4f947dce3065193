/**
 * What pierces the wall: radial bodies from inside the bore to outside of everything, wider where edges are broken.
 *
 * The flat body's h is a share of the wall: 0 on the seat, −1 on the bore, so that r = seat + h · (seat − bore) at the
 * place's w; refinement along straight lines of h then bends both ends true.
 */

import type { Band } from "../band/band.js";
import type { Profile } from "../band/profile/profile.js";
import type { BandSurface } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { largestWhere } from "../base/math/largest.js";
import type { Point3 } from "../base/math/point.js";
import { finish, type Pausing } from "../base/pausing.js";
import { showLength, TOP } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";
import type { FlatBody } from "../relief/flat-body.js";
import { Faces, type Place } from "./faces.js";
import { type BendOptions, bendBody } from "./relief.js";

export interface HoleOptions extends BendOptions {
  readonly profile: Band;
  /** How far above the seat the body reaches, mm. */
  readonly reach: number;
}

/** How far the body reaches into the bore, mm: clear of its facets. */
const INTO_BORE = 0.2;

/** The body to be cut out for pierced regions. */
export function buildHole(body: FlatBody, options: HoleOptions): Mesh {
  return finish(buildingHole(body, options));
}

/** The same in pieces. */
export function* buildingHole(body: FlatBody, { profile, reach, ...options }: HoleOptions): Pausing<Mesh> {
  const { wrap } = options;
  const section = radialSection(profile, wrap);
  const mouth = body.outline.flat(2);
  const wallOf = ([u, v]: Point3) => section(u, v).wall;
  checkHole(body, mouth, wallOf, wrap);
  const least = Math.min(...mouth.map(wallOf));
  const at =
    (h: (point: Point3) => number): Place =>
    (point) => [point[0], point[1], h(point)];
  const [seat, bore] = [at((p) => -p[2] / wallOf(p)), at((p) => -1 + p[2] / wallOf(p))];
  const [lid, floor] = [at(() => reach / least), at(() => -1 - INTO_BORE / least)];
  const faces = new Faces(body.seam);
  for (const polygon of body.outline) {
    yield* faces.polygon(polygon, lid, false);
    yield* faces.walls(polygon, seat, lid);
    yield* faces.walls(polygon, floor, bore);
    yield* faces.polygon(polygon, floor, true);
  }
  for (const polygon of body.top) {
    yield* faces.polygon(polygon, seat, true);
    yield* faces.polygon(polygon, bore, false);
  }
  for (const polygon of body.throat) yield* faces.walls(polygon, bore, seat);
  const forward = (u: number, v: number, h: number): Point3 => {
    const { w, r, wall } = section(u, v);
    const angle = wrap.angleAt(u);
    const at = wrap.revolved ? r + h * wall : radiusAt(h, { r, wall }, section(homeOf(body, u), v));
    return [at * Math.cos(angle), at * Math.sin(angle), w];
  };
  // The edges of holes follow the band's own facets, of the seat and of the bore, so that they look drawn with one line.
  const known = options.stations;
  const more = boreStations(profile, wrap).filter((v) => known.every((other) => Math.abs(v - other) > APART));
  const stations = [...known, ...more].sort((a, b) => a - b);
  return yield* bendBody(yield* faces.mesh(), body.seam, { ...options, stations, aside: 0, forward });
}

/** u of a place in the tile that was laid out, mm. */
function homeOf({ seam }: FlatBody, u: number): number {
  if (seam === undefined) return u;
  const period = seam[1] - seam[0];
  return u - period * Math.floor((u - seam[0]) / period);
}

/**
 * Radius at a share h of the wall that was laid out in another tile, where the wall may be thicker or thinner: as many mm
 * from the surface that is nearer.
 */
function radiusAt(h: number, here: Pick<Radial, "r" | "wall">, laid: Pick<Radial, "wall">): number {
  return h >= -0.5 ? here.r + h * laid.wall : here.r - here.wall + (1 + h) * laid.wall;
}

/** Lines nearer to each other than this are one, mm: the bore bends by far less than any tolerance between them. */
const APART = 0.01;

/** v over the vertices of the bore's flattened line at the top of the ring, mm. */
function boreStations({ polyline, seatSpan: [first, last] }: Profile, wrap: BandSurface): number[] {
  const half = wrap.seatLength / 2;
  const line = wrap.lineAt(TOP);
  const across = (v: number) => line.point(v, 0)[0];
  return polyline.flatMap(([w], i) => {
    if ((i >= first && i <= last) || w <= across(-half) || w >= across(half)) return [];
    return largestWhere(-half, half, (v) => across(v) <= w);
  });
}

interface Radial {
  readonly w: number;
  /** Radius of the seat, mm. */
  readonly r: number;
  /** From the bore to the seat along the radius, mm. */
  readonly wall: number;
}

/** The wall along the radius at u and v. */
function radialSection(band: Band, wrap: BandSurface): (u: number, v: number) => Radial {
  const known = new Map<number, Map<number, Radial>>();
  return (u, v) => {
    const angle = wrap.revolved ? wrap.startAngle : wrap.angleAt(u);
    const there = known.get(angle)?.get(v);
    if (there !== undefined) return there;
    const [w, r] = wrap.lineAt(angle).point(v, 0);
    const found = { w, r, wall: r - boreAt(band.sectionAt(angle), w) };
    const line = known.get(angle) ?? new Map<number, Radial>();
    known.set(angle, line.set(v, found));
    return found;
  };
}

/** Radius of the bore at w. */
function boreAt({ polyline }: Profile, w: number): number {
  let least = Number.POSITIVE_INFINITY;
  polyline.forEach(([aw, ar], i) => {
    const [bw, br] = polyline[(i + 1) % polyline.length];
    if ((aw - w) * (bw - w) > 0 || aw === bw) return;
    least = Math.min(least, ar + ((br - ar) * (w - aw)) / (bw - aw));
  });
  return least;
}

/** Least share of the seat's normal that must lie along the radius: steeper, and a radial hole would only graze it. */
const LEAST_FACING = 0.5;

/** @throws AnnuletError `seat-too-steep`, `broken-too-large` */
function checkHole(
  { path, height: broken }: FlatBody,
  mouth: readonly Point3[],
  wallOf: (point: Point3) => number,
  wrap: BandSurface,
): void {
  const steep = mouth.find(([u, v]) => wrap.lineAt(wrap.angleAt(u)).normal(v)[1] < LEAST_FACING);
  if (steep !== undefined) {
    throw new AnnuletError({
      code: "seat-too-steep",
      message: `the seat leans by more than 60° at v ${showLength(steep[1])}, where a hole towards the finger would only graze it`,
      path,
      hint: "keep pierced regions to where the seat faces outward",
    });
  }
  const most = Math.min(...mouth.map(wallOf)) / 2;
  if (broken < most) return;
  throw new AnnuletError({
    code: "broken-too-large",
    message: `edges broken by ${showLength(broken)} meet inside the wall, which is ${showLength(2 * most)} thick there`,
    path: `${path}.broken`,
    value: broken,
    allowed: `0 to under ${showLength(Math.floor(most * 1000) / 1000)}`,
    hint: "break the edges less, or make the band thicker",
  });
}
