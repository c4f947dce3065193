/**
 * The surfaces that carry marks, each with its own map: the seat, a rail's top, the bore.
 *
 * A surface's normal stands to the left of its line. The bore's line runs from high w to low w, so that its normal points
 * to the finger axis; v grows towards −z there, and u and v, seen from inside, are right and up as they are on the seat
 * seen from outside.
 */

import type { Band } from "../band/band.js";
import type { Profile } from "../band/profile/profile.js";
import { makeLine } from "../band/surface/line.js";
import { revolvedSurface } from "../band/surface/revolved.js";
import type { BandSurface } from "../band/surface/surface.js";
import { taperedSurface } from "../band/surface/tapered.js";
import { AnnuletError } from "../base/errors.js";
import { reverseSegment, type Segment } from "../base/math/curve.js";
import { radians } from "../base/units.js";

export type SurfaceName = "seat" | "rail" | "bore";

/** A surface of the band; lengths in mm. */
export interface MarkSurface {
  readonly name: SurfaceName;
  /** For messages: `the bore`. */
  readonly what: string;
  /** Its exact line where lengths are true, in the direction of v. */
  readonly line: readonly Segment[];
  /** The same at any other θ. */
  readonly lineAt: (angle: number) => readonly Segment[];
  /** Its map; the reference radius is the one at the mark's own v. */
  readonly wrap: BandSurface;
  /** Whether v grows towards −z. */
  readonly turned: boolean;
}

export interface SurfacePlace {
  readonly at: SurfaceName;
  /** Of a rail. Default +z. */
  readonly side?: "+z" | "-z" | undefined;
  /** mm from the surface's middle line, + towards +z. */
  readonly v: number;
  /** θ of the mark's middle, degrees: there lengths are true, also on a band that tapers. */
  readonly angle: number;
  /** Where the place stands in the document, for errors. */
  readonly path: string;
}

/**
 * The surface that a mark stands on.
 *
 * @param startAngle θ of u = 0, radians: the band's own, so that facets fall together
 * @throws AnnuletError `no-rail` on a band without; `no-bore-face` where rounded edges leave nothing of the bore
 */
export function surfaceAt(place: SurfacePlace, band: Band, startAngle: number): MarkSurface {
  const { at: name } = place;
  const turned = name === "bore";
  const trueAt = radians(place.angle);
  const lineAt = (angle: number) => lineOf(place, band.sectionAt(angle));
  const line = lineAt(trueAt);
  const [, referenceRadius] = makeLine(line).point(turned ? -place.v : place.v, 0);
  const wrap = band.revolved
    ? revolvedSurface({ line, referenceRadius, startAngle })
    : taperedSurface({ chainAt: lineAt, trueAt, referenceRadius, startAngle });
  return { name, what: `the ${name}`, line, lineAt, wrap, turned };
}

function lineOf({ at, side, path }: SurfacePlace, { seat, rails, boreFace }: Profile): readonly Segment[] {
  if (at === "seat") return seat;
  if (at === "bore") {
    if (boreFace.length > 0) return [...boreFace].reverse().map(reverseSegment);
    throw new AnnuletError({
      code: "no-bore-face",
      message: "the rounded inner edges leave nothing of the bore to stand on",
      path: `${path}.at`,
      value: at,
      hint: "make profile.bore.edge smaller",
    });
  }
  const face = rails?.faces[side === "-z" ? 0 : 1];
  if (rails !== undefined && face !== undefined && face[1] > face[0]) {
    return [{ kind: "line", from: [face[0], rails.top], to: [face[1], rails.top] }];
  }
  throw new AnnuletError({
    code: "no-rail",
    message: rails === undefined ? "the band has no rails" : "the rails are rounded all over and have no flat top",
    path: `${path}.at`,
    value: at,
    allowed: "seat or bore",
    hint: "rails belong to a channel: profile.outside.form",
  });
}
