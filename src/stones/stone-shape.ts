/**
 * What is measured of a stone in its place: its girdle as a flat body of the girdle's height, and all of it.
 */
import type { Convex } from "../base/math/convex-distance.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { findCut } from "../gems/cuts/catalogue.js";
import { outlinePoints } from "../gems/outline.js";
import { heightsOf, type Stone, type StoneHeights } from "../gems/stone.js";
import { stoneFacets } from "../gems/stone-mesh.js";
import { acrossOf, type Frame } from "./frame.js";

/** A stone's form in its own coordinates, mm. */
export interface StoneShape {
  readonly stone: Stone;
  readonly heights: StoneHeights;
  /** Farthest point of the girdle's outline in a direction. */
  readonly rim: (x: number, y: number) => Point2;
  /** The corners of all its facets. */
  readonly points: readonly Point3[];
  /** Its facets as rings of corners. */
  readonly facets: readonly (readonly number[])[];
  /** Farthest that its outline reaches from the middle. */
  readonly reach: number;
}

/** How far the chords of a curved outline that is no ellipse may lie inside it, mm: far below any gap. */
const FINE = 0.0005;

/** Facets of a girdle need be no finer to tell where stones touch below it, mm. */
const COARSE = 0.005;

/** The form of a stone. */
export function shapeOf(stone: Stone): StoneShape {
  const { points, facets } = stoneFacets(stone, COARSE);
  const outline = findCut(stone.cut).outline(stone);
  const isEllipse = stone.cut === "round" || stone.cut === "oval" || isRoundDome(outline.stretch, stone);
  const rim = isEllipse ? ellipseRim(stone) : polygonRim(outlinePoints(outline, FINE));
  return {
    stone,
    heights: heightsOf(stone),
    rim,
    points,
    facets: facets.map(({ ring }) => ring),
    reach: points.reduce((most, [x, y]) => Math.max(most, Math.hypot(x, y)), Math.hypot(...rim(1, 0))),
  };
}

/** A cabochon's outline is an ellipse too. */
function isRoundDome(stretch: number, { cut, length, width }: Stone): boolean {
  return cut === "cabochon" && Math.abs(stretch * width - length) < FINE * width;
}

function ellipseRim({ length, width }: Stone): StoneShape["rim"] {
  const [a, b] = [length / 2, width / 2];
  return (x, y) => {
    const size = Math.sqrt(a * a * x * x + b * b * y * y);
    return size === 0 ? [a, 0] : [(a * a * x) / size, (b * b * y) / size];
  };
}

function polygonRim(points: readonly Point2[]): StoneShape["rim"] {
  return (x, y) => {
    let best = points[0];
    let most = Number.NEGATIVE_INFINITY;
    for (const point of points) {
      const far = x * point[0] + y * point[1];
      if (far > most) [most, best] = [far, point];
    }
    return best;
  };
}

/** A body that is given by its farthest points in its own coordinates, in its place. */
function placedBody(frame: Frame, farthest: (x: number, y: number, z: number) => Point3): Convex {
  const { at, along, out } = frame;
  const across = acrossOf(frame);
  return {
    middle: at,
    farthest: ([dx, dy, dz]) => {
      const [x, y, z] = farthest(
        dx * along[0] + dy * along[1] + dz * along[2],
        dx * across[0] + dy * across[1] + dz * across[2],
        dx * out[0] + dy * out[1] + dz * out[2],
      );
      return [
        at[0] + x * along[0] + y * across[0] + z * out[0],
        at[1] + x * along[1] + y * across[1] + z * out[1],
        at[2] + x * along[2] + y * across[2] + z * out[2],
      ];
    },
  };
}

/** The girdle in its place: its outline, as high as the girdle. */
export function girdleBody({ rim, heights }: StoneShape, frame: Frame): Convex {
  const low = -heights.girdle;
  return placedBody(frame, (x, y, z) => {
    const [px, py] = rim(x, y);
    return [px, py, z > 0 ? 0 : low];
  });
}

/** All of the stone in its place. */
export function wholeBody({ rim, heights, points }: StoneShape, frame: Frame): Convex {
  const low = -heights.girdle;
  return placedBody(frame, (x, y, z) => {
    const [px, py] = rim(x, y);
    let best: Point3 = [px, py, z > 0 ? 0 : low];
    let most = x * px + y * py + z * best[2];
    for (const point of points) {
      const far = x * point[0] + y * point[1] + z * point[2];
      if (far > most) [most, best] = [far, point];
    }
    return best;
  });
}

/** Shapes of stones: of stones that differ in size alone one is made, and the others are it, larger or smaller. */
export class StoneShapes {
  readonly #made = new Map<string, StoneShape>();

  of(stone: Stone): StoneShape {
    const { cut, length, width, narrow, proportions } = stone;
    const ratios = [length / width, narrow === undefined ? 0 : narrow / width];
    const key = JSON.stringify([cut, ratios.map((ratio) => ratio.toFixed(RATIO_DIGITS)), proportions]);
    const made = this.#made.get(key) ?? shapeOf(stone);
    this.#made.set(key, made);
    return scaledShape(made, stone);
  }
}

/** Decimals in which ratios differ by more than rounding. */
const RATIO_DIGITS = 9;

function scaledShape(made: StoneShape, stone: Stone): StoneShape {
  const by = stone.width / made.stone.width;
  if (by === 1) return made;
  let points: readonly Point3[] | undefined;
  return {
    stone,
    heights: heightsOf(stone),
    rim: (x, y) => {
      const [px, py] = made.rim(x, y);
      return [px * by, py * by];
    },
    get points() {
      points ??= made.points.map(([x, y, z]): Point3 => [x * by, y * by, z * by]);
      return points;
    },
    facets: made.facets,
    reach: made.reach * by,
  };
}
