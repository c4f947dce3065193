/**
 * Holes where they are narrowest. A hole goes straight towards the finger axis, so that along the band it is as much narrower
 * at the bore as the bore's radius is smaller; across the band it keeps its width, which on a curved seat is less than v says.
 * Where its edges are broken the throat between them counts.
 */
import type { Point2 } from "../../base/math/point.js";
import type { FlatBody } from "../../relief/flat-body.js";
import { flatArt } from "../details/flat-art.js";
import { narrowest } from "../details/narrow.js";
import { chordsAt } from "./measure-section.js";
import type { JudgedPiece, Measured, Place } from "./piece.js";

export interface HoleMeasures {
  readonly hole: Measured | undefined;
  readonly "hole-depth": Measured | undefined;
}

/** Places that are told of each. */
const PLACES = 10;

/** @param limits up to which is looked: mm, and the way through over the width */
export function measureHoles(
  piece: JudgedPiece,
  limits: Readonly<Record<"hole" | "hole-depth", number>>,
): HoleMeasures {
  const { pattern, profile, wrap } = piece;
  const pierced = pattern.bodies.filter(({ mode }) => mode === "pierced");
  if (pierced.length === 0) return { hole: undefined, "hole-depth": undefined };
  const along = profile.boreRadius / wrap.referenceRadius;
  const bodies = pierced.map((body) => atBore(body, piece, along));
  const art = flatArt({ ...pattern, bodies }, { around: wrap.round * along, seatLength: profile.width });
  const options = { scale: art.grid.scale, within: art.core };
  const placeOf = ([u, w]: Point2): Place => {
    const angle = wrap.angleAt((u + art.start) / along);
    return { space: [profile.boreRadius * Math.cos(angle), profile.boreRadius * Math.sin(angle), w] };
  };
  const way = Math.max(...pierced.map((body) => wayThrough(body, piece)));
  const hole = narrowest(art.pierced, limits.hole, options);
  const deep = narrowest(art.pierced, way / limits["hole-depth"], { ...options, tips: false });
  const places = (found: { readonly places: readonly { readonly at: Point2 }[] }) =>
    found.places.slice(0, PLACES).map(({ at }) => placeOf(at));
  return {
    hole: hole && {
      figure: hole.width,
      places: places(hole),
      more: hole.tip ? "half a millimetre from its point" : "at the bore",
    },
    "hole-depth": deep && {
      figure: way / deep.width,
      places: places(deep),
      more: `${way.toFixed(2)} mm through and ${deep.width.toFixed(2)} mm wide`,
    },
  };
}

/** A hole as it opens in the bore: lengths along the bore, and w in place of v. */
function atBore(body: FlatBody, { wrap }: JudgedPiece, along: number): FlatBody {
  const rings = body.throat.length > 0 ? body.throat : body.outline;
  const across = (u: number, v: number) => wrap.lineAt(wrap.angleAt(u)).point(v, 0)[0];
  return {
    ...body,
    outline: rings.map((polygon) =>
      polygon.map((ring) => ring.map(([u, v, h]) => [u * along, across(u, v), h] as const)),
    ),
    seam: body.seam && [body.seam[0] * along, body.seam[1] * along],
    period: body.period === undefined ? undefined : body.period * along,
  };
}

/** The longest way through the metal along a hole's outline, mm. */
function wayThrough({ outline }: FlatBody, { profile, wrap }: JudgedPiece): number {
  const ways = outline.flat(2).map(([u, v]) => {
    const angle = wrap.angleAt(u);
    const [w] = wrap.lineAt(angle).point(v, 0);
    return chordsAt(profile.sectionAt(angle).polyline, w).reduce((most, { figure }) => Math.max(most, figure), 0);
  });
  return ways.reduce((a, b) => Math.max(a, b), 0);
}
