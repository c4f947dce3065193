/**
 * Which part of the document a face of the ring comes from, and where on the ring a part of the document is: what a view needs
 * to choose parts on the metal and to mark what is chosen.
 *
 * A face is the edge of one part: just beneath it is that part's metal and just above it is not, or, of what is cut, the other way
 * round. Of several parts whose edges lie near it, the nearest is meant; of those that lie as near, the one that is worked last.
 */

import { sectionParts } from "../../band/profile/section-parts.js";
import { nearestShare } from "../../base/math/nearest-share.js";
import type { Point3 } from "../../base/math/point.js";
import { regionsNear } from "../regions-near.js";
import { BAND_PATHS } from "./band-paths.js";
import { regionsOf } from "./body-regions.js";
import { type Member, membersOf, type PartSource } from "./members.js";
import { partLines } from "./part-lines.js";

/** A place on the ring's surface. */
export interface SurfacePlace {
  /** mm, in the design's coordinates. */
  readonly point: Point3;
  /** Of the face there, away from the metal; any length above 0. */
  readonly normal: Point3;
}

/** A part of the document. */
export interface RingPart {
  /** Where it stands in the document: `pattern.regions[2]`, `beads[0]`, `lettering[1]`, `profile.outside.rail`. */
  readonly path: string;
  /** Names of the regions in it, or what its beads follow; none for the band and for marks. */
  readonly names: readonly string[];
}

/** How far beneath and above a face is looked, in tolerances: the first at which an edge is crossed tells whose it is. Chosen. */
const STEPS = [0.25, 0.5, 1, 2, 4, 8];

export class RingParts {
  readonly #source: PartSource;
  #members: readonly Member[] | undefined;

  constructor(source: PartSource) {
    this.#source = source;
  }

  /** The part whose face lies at a place. A face of no part, broken edges say, is that of the nearest region, else the band's. */
  at({ point, normal }: SurfacePlace): RingPart {
    this.#members ??= membersOf(this.#source);
    const length = Math.hypot(...normal);
    const away = (by: number): Point3 => [0, 1, 2].map((k) => point[k] + (by * normal[k]) / length) as never;
    for (const step of STEPS) {
      const [beneath, above] = [away(-step * this.#source.tolerance), away(step * this.#source.tolerance)];
      const found = this.#members.findLast(({ op, holds }) => {
        const [low, high] = [holds(beneath), holds(above)];
        return op === "add" ? low && !high : high && !low;
      });
      if (found === undefined) continue;
      // The part's own side of its face: what was cut lies above it.
      return found.partAt?.(found.op === "add" ? beneath : above) ?? this.#bandPart(point);
    }
    return this.#nearRegion(point) ?? this.#bandPart(point);
  }

  /**
   * Lines on the ring along the edges of a part, of the part around it where it has none itself, or where it lies in one.
   *
   * @returns segments, six numbers each, mm; none where nothing of it is seen
   */
  lines(path: string): Float32Array {
    return partLines(this.#source, path);
  }

  #nearRegion(point: Point3): RingPart | undefined {
    const { pattern, wrap } = this.#source;
    const bodies = pattern.bodies.filter(({ filling }) => filling !== true);
    const [name] = regionsNear([point], bodies, wrap);
    const body = bodies.find(({ path }) => name?.split(" ")[0] === path);
    if (body === undefined) return undefined;
    const [u, v] = wrap.inverse(...point);
    return regionsOf(body, wrap)(u, v);
  }

  /** Of the band's cross-section the part that is nearest. */
  #bandPart([x, y, z]: Point3): RingPart {
    const section = this.#source.profile.sectionAt(Math.atan2(y, x));
    const { polyline } = section;
    const r = Math.hypot(x, y);
    const ways = polyline.map(([w0, r0], i) => {
      const [w1, r1] = polyline[(i + 1) % polyline.length];
      const share = nearestShare(z - w0, r - r0, w1 - w0, r1 - r0);
      return Math.hypot(z - w0 - share * (w1 - w0), r - r0 - share * (r1 - r0));
    });
    return { path: BAND_PATHS[sectionParts(section)[ways.indexOf(Math.min(...ways))]], names: [] };
  }
}
