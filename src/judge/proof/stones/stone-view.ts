/**
 * A stone as the proof sees it: distances to its outline by half planes, or by the radius of a round one, and its heights.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../../../base/math/point.js";
import { findCut } from "../../../gems/cuts/catalogue.js";
import { outlinePoints } from "../../../gems/outline.js";
import { heightsOf } from "../../../gems/stone.js";
import { stoneFacets } from "../../../gems/stone-mesh.js";
import type { PlacedStone } from "../../../stones/placed-stone.js";
import { type Clip, inCone, keepBelow, type Line } from "./span.js";
import { lineIn, type Through } from "./through.js";

/** A side of an outline: what lies inside has n · p ≤ h. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly h: number;
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

  constructor(placed: PlacedStone, tolerance: number) {
    const { stone, out, along } = placed;
    const { cut, length, width, narrow } = stone;
    const { crown, girdle, pavilion } = heightsOf(stone);
    this.placed = placed;
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
      return { nx, ny, h: ax * nx + ay * ny };
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

  /** How far its outline, its keel and its table reach across a row that it lies along by so much, a cosine. */
  across(along: number): { readonly half: number; readonly keel: number; readonly table: number } {
    const sine = Math.sqrt(Math.max(0, 1 - along * along));
    const reach = (points: readonly Point3[]) =>
      points.reduce((most, [x, y]) => Math.max(most, Math.abs(x * sine) + Math.abs(y * along)), 0);
    const tops = this.#corners.filter(([, , z]) => z > this.crown - AS_LOW);
    const half = this.radius ?? reach(this.#corners);
    return { half, keel: Math.max(...this.keel.map(Math.abs)) * sine, table: reach(tops) };
  }

  /** mm that a place lies outside the girdle seen from above, negative inside. */
  outside(x: number, y: number): number {
    if (this.radius !== undefined) return Math.hypot(x, y) - this.radius;
    return this.#sides.reduce((most, { nx, ny, h }) => Math.max(most, nx * x + ny * y - h), Number.NEGATIVE_INFINITY);
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
