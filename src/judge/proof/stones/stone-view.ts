/**
 * A stone as the proof sees it: distances to its outline by half planes, or by the radius of a round one, and its heights.
 */
import { vec3 } from "gl-matrix";
import type { Point2, Point3 } from "../../../base/math/point.js";
import { findCut } from "../../../gems/cuts/catalogue.js";
import { outlinePoints } from "../../../gems/outline.js";
import { heightsOf } from "../../../gems/stone.js";
import { stoneFacets } from "../../../gems/stone-mesh.js";
import type { PlacedStone } from "../../../stones/placed-stone.js";
import { type Clip, inCone, keepBelow, type Line } from "./span.js";
import { lineIn, type Through } from "./through.js";

/** A side of an outline: what lies inside has n · p ≤ h; it begins at (x, y) and is so long. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly h: number;
  readonly x: number;
  readonly y: number;
  readonly long: number;
}

export interface DrawnTogether {
  readonly by: number;
  /** From where to where along x the keel lies. */
  readonly keel: readonly [number, number];
  /** At height 0, and what a mm of height adds to it. */
  readonly share: number;
  readonly slope?: number;
  readonly grown: number;
}

/** A stone seen along its row: how far it reaches across, mm. */
export interface AcrossRow {
  readonly half: number;
  readonly keel: number;
  readonly table: number;
  /** `ahead`: how far along the row. */
  readonly corners: readonly { readonly reach: number; readonly ahead: number; readonly z: number }[];
}

export class StoneView {
  readonly placed: PlacedStone;
  readonly width: number;
  readonly length: number;
  readonly crown: number;
  readonly band: number;
  readonly pavilion: number;
  /** Half of a round stone's width; undefined of others. */
  readonly radius: number | undefined;
  /** Where its pavilion narrows down to, from x to x. */
  readonly keel: readonly [number, number];
  readonly #sides: readonly Side[];
  readonly #across: Point3;
  readonly #corners: readonly Point3[];
  readonly #tolerance: number;

  constructor(placed: PlacedStone, tolerance: number) {
    const { stone, out, along } = placed;
    const { cut, length, width, narrow } = stone;
    const { crown, girdle, pavilion } = heightsOf(stone);
    this.placed = placed;
    this.#tolerance = tolerance;
    this.width = width;
    this.length = length;
    this.crown = crown;
    this.band = girdle;
    this.pavilion = pavilion;
    this.radius = cut === "round" ? width / 2 : undefined;
    this.#corners = stoneFacets(stone, tolerance).points;
    this.keel = pavilion === 0 ? [0, 0] : lowest(this.#corners);
    this.#across = vec3.cross([0, 0, 0], out, along) as unknown as Point3;
    const size = narrow === undefined ? { length, width } : { length, width, narrow };
    const points = this.radius === undefined ? outlinePoints(findCut(cut).outline(size), tolerance) : [];
    this.#sides = points.map(([ax, ay], i) => {
      const [bx, by] = points[(i + 1) % points.length];
      const side = Math.hypot(bx - ax, by - ay);
      const [nx, ny] = [(by - ay) / side, (ax - bx) / side];
      return { nx, ny, h: ax * nx + ay * ny, x: ax, y: ay, long: side };
    });
  }

  /** Level of the girdle's upper edge over the surface. */
  get girdleLevel(): number {
    return this.placed.level - this.crown;
  }

  /** A point in the stone's own coordinates. */
  local([px, py, pz]: Point3): Point3 {
    const { at, along, out } = this.placed;
    const [x, y, z] = [px - at[0], py - at[1], pz - at[2]];
    const across = this.#across;
    return [
      x * along[0] + y * along[1] + z * along[2],
      x * across[0] + y * across[1] + z * across[2],
      x * out[0] + y * out[1] + z * out[2],
    ];
  }

  /** A column in the stone's own coordinates. */
  line(through: Through): Line {
    const { at, along, out } = this.placed;
    return lineIn({ at, along, across: this.#across, out }, through);
  }

  /** A point of its own coordinates in space. */
  space([x, y, z]: Point3): Point3 {
    const { at, along, out } = this.placed;
    const across = this.#across;
    const [px, py, pz] = [0, 1, 2].map((k) => at[k] + x * along[k] + y * across[k] + z * out[k]);
    return [px, py, pz];
  }

  /**
   * The greatest height at which a cone may begin that is drawn together from the girdle moved out by some room to the keel, over so
   * many mm of depth, so that every corner keeps that room from its sides. What keeps a corner from a side of slope k is the room
   * at right angles to it: √(1 + k²) times as much along the level.
   */
  coneEdge(room: number, depth: number): number {
    const keel = this.keel;
    const below = this.#corners.filter(([, , z]) => z < -AS_LOW);
    const edgeFor = (wide: number, middle: number, reach: (corner: Point3) => number) => {
      const run = wide - middle;
      const aside = room * Math.hypot(1, run / depth);
      return below.reduce(
        (edge, corner) => Math.min(edge, corner[2] + depth * (1 - (reach(corner) + aside - middle) / run)),
        0,
      );
    };
    if (this.radius !== undefined) return edgeFor(this.radius + room, 0, ([x, y]) => Math.hypot(x, y));
    return this.#sides.reduce((edge, { nx, ny, h }) => {
      const middle = Math.max(nx * keel[0], nx * keel[1]);
      return Math.min(
        edge,
        edgeFor(h + room, middle, ([x, y]) => nx * x + ny * y),
      );
    }, 0);
  }

  /** How far its outline, its keel and its table reach across a row that it lies along by so much, a cosine. */
  across(along: number): AcrossRow {
    const sine = Math.sqrt(Math.max(0, 1 - along * along));
    const corners = this.#corners.map(([x, y, z]): AcrossRow["corners"][number] => ({
      reach: Math.abs(x * sine) + Math.abs(y * along),
      ahead: Math.abs(x * along) + Math.abs(y * sine),
      z,
    }));
    const widest = (some: AcrossRow["corners"]) => some.reduce((most, { reach }) => Math.max(most, reach), 0);
    const table = widest(corners.filter(({ z }) => z > this.crown - AS_LOW));
    const half = this.radius ?? widest(corners);
    return { half, keel: Math.max(...this.keel.map(Math.abs)) * sine, table, corners };
  }

  /** mm that a place lies outside the girdle seen from above, negative inside. */
  outside(x: number, y: number): number {
    if (this.radius !== undefined) return Math.hypot(x, y) - this.radius;
    return this.#sides.reduce((most, { nx, ny, h }) => Math.max(most, nx * x + ny * y - h), Number.NEGATIVE_INFINITY);
  }

  /** mm from the girdle to a place, seen from above; negative inside. Beside a corner it is more than what `outside` says. */
  away(x: number, y: number): number {
    const outside = this.outside(x, y);
    if (this.radius !== undefined || outside <= 0) return outside;
    return this.#sides.reduce((least, { nx, ny, x: ax, y: ay, long }) => {
      const along = Math.min(long, Math.max(0, (y - ay) * nx - (x - ax) * ny));
      return Math.min(least, Math.hypot(x - ax + along * ny, y - ay - along * nx));
    }, Number.POSITIVE_INFINITY);
  }

  /** How far from the middle, in a direction, a place lies that is so many mm outside of the girdle's sides. */
  reachAt(angle: number, by: number): number {
    if (this.radius !== undefined) return this.radius + by;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return this.#sides.reduce((least, { nx, ny, h }) => {
      const facing = nx * cos + ny * sin;
      return facing <= 0 ? least : Math.min(least, (h + by + this.#tolerance) / facing);
    }, Number.POSITIVE_INFINITY);
  }

  /** Corners of the outline whose sides lie so many mm outside of the girdle's; chords lie inside it by up to the tolerance. */
  outlineBeside(by: number): Point2[] {
    const out = by + this.#tolerance;
    return this.#sides.map(({ nx, ny, h }, i) => {
      const before = this.#sides[(i + this.#sides.length - 1) % this.#sides.length];
      const turn = before.nx * ny - before.ny * nx;
      return [
        ((before.h + out) * ny - (h + out) * before.ny) / turn,
        ((h + out) * before.nx - (before.h + out) * nx) / turn,
      ];
    });
  }

  /** What lies no farther outside the girdle than by + slope · z, mm. */
  beside(by: number, slope = 0): Clip {
    if (this.radius !== undefined) return inCone(0, this.radius + by, slope);
    const sides = this.#sides;
    return ({ x, y, z, dx, dy, dz }, span) => {
      for (const { nx, ny, h } of sides) {
        keepBelow(span, nx * x + ny * y - h - by - slope * z, nx * dx + ny * dy - slope * dz);
      }
    };
  }

  /**
   * What lies in the girdle moved out by so many mm, drawn together about the keel to a share that changes with the height, and then
   * grown by so many mm.
   */
  drawnTogether({ by, keel, share, slope = 0, grown }: DrawnTogether): Clip {
    if (this.radius !== undefined) {
      const wide = this.radius + by;
      return inCone(0, share * wide + grown, slope * wide);
    }
    const sides = this.#sides.map(({ nx, ny, h }) => {
      const middle = Math.max(nx * keel[0], nx * keel[1]);
      return { nx, ny, nz: -slope * (h + by - middle), most: share * (h + by) + (1 - share) * middle + grown };
    });
    return ({ x, y, z, dx, dy, dz }, span) => {
      for (const { nx, ny, nz, most } of sides) {
        keepBelow(span, nx * x + ny * y + nz * z - most, nx * dx + ny * dy + nz * dz);
      }
    };
  }
}

/** Points this near to the lowest are as low, mm: rounding. */
const AS_LOW = 1e-6;

/** From where to where along x a stone's lowest points lie, but for half the width of a culet. */
function lowest(points: readonly Point3[]): readonly [number, number] {
  const least = Math.min(...points.map(([, , z]) => z));
  const low = points.filter(([, , z]) => z < least + AS_LOW);
  const half = Math.max(...low.map(([, y]) => Math.abs(y)));
  // A keel may rise towards one end.
  const line = half > AS_LOW ? low : points.filter(([, y, z]) => Math.abs(y) < AS_LOW && z < least / 2);
  return [Math.min(...line.map(([x]) => x)) + half, Math.max(...line.map(([x]) => x)) - half];
}
