/**
 * The hollow that a stone is laid into: as wide as the girdle with a little room, from the bearing out past the surface; below
 * that a cone to the pavilion's angle, on which the stone rests; and the pilot below it, blind or through to the bore.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { type GirdleShape, girdleBeside, towardsKeel } from "./girdle-shape.js";
import { circle, circleCorners } from "./offset-outline.js";
import type { Level } from "./stacked.js";

/** Room between a stone and its hollow, mm a side: melee 0.1 to 0.2 mm in all (apexjewelrycasting.com). */
export const ROOM = 0.05;

/** A blind pilot ends so far below the culet, mm: clear of it wherever in its hollow the stone comes to lie (chosen). */
const BELOW_CULET = 0.1;

/** A tool goes so far beyond the bore, mm: clear of its facets. */
const INTO_BORE = 0.2;

/** Openings that differ by less are one, mm (chosen). */
const SAME_OPENING = 0.01;

/** What a hollow is cut into, in the stone's coordinates; mm. */
export interface Around {
  /** Height of the surface that the stone is set into, over the stone's middle. */
  readonly surface: number;
  /** Height of the bore under the stone's middle: below 0. */
  readonly bore: number;
  /** Above everything that stands there. */
  readonly above: number;
}

/** An opening below the stone into the bore. */
export interface Opening {
  /** Whether it is round; otherwise as the stone is cut. */
  readonly round: boolean;
  /** Share of the stone's width. */
  readonly size: number;
  /** How far its edge in the bore is broken, mm. */
  readonly edge: number;
}

export interface HollowOptions {
  readonly tolerance: number;
  /** Width of the pilot below the bearing, share of the stone's. */
  readonly pilot: number;
  /** Undefined where the pilot is blind. */
  readonly opening: Opening | undefined;
  readonly around: Around;
}

/** Where the bearing's cone begins, and how deep it would be at the keel. */
export interface Bearing {
  /** Height of its upper edge, mm; below 0. */
  readonly edge: number;
  /** mm from there down to the keel. */
  readonly depth: number;
}

/** The bearing of a stone: nowhere nearer to it than its room. */
export function bearingOf(shape: GirdleShape, tolerance: number): Bearing {
  const { pavilion, band, width, culet } = shape;
  const outline = girdleBeside(shape, ROOM, tolerance, "hollow");
  if (pavilion === 0) return { edge: -band - ROOM, depth: 0 };
  const depth = (pavilion * (width / 2 + ROOM)) / ((width - culet) / 2);
  return { edge: edgeFor(outline, shape, depth), depth };
}

/** Corners on the girdle's upper edge lie in its plane but for rounding, mm. */
const ON_EDGE = 1e-9;

/**
 * The height of a cone's edge at which the stone keeps its room: every corner of the pavilion lies so far inside of each side.
 *
 * A side whose upper and lower edge are not parallel, as a tapered baguette's, is no plane: it is made of two triangles, whichever
 * way it is parted and wherever the cone ends. All of their planes turn about its ends between those at the keel and at the edge.
 */
function edgeFor(outline: readonly Point2[], { keel, corners }: GirdleShape, depth: number): number {
  let edge = 0;
  const ends = towardsKeel(outline, keel, 0);
  outline.forEach((at, i) => {
    const next = (i + 1) % outline.length;
    const [a, b]: Point3[] = [
      [...at, 0],
      [...outline[next], 0],
    ];
    const [low, lowNext]: Point3[] = [
      [...ends[i], -depth],
      [...ends[next], -depth],
    ];
    const planes = [
      [a, b, low],
      [a, b, lowNext],
      [a, lowNext, low],
      [b, lowNext, low],
    ];
    for (const [from, beside, below] of planes) {
      const normal = outwardOf(from, beside, below);
      if (normal === undefined) continue;
      const [nx, ny, nz] = normal;
      for (const [x, y, z] of corners) {
        if (z > ON_EDGE) continue;
        const out = nx * (x - from[0]) + ny * (y - from[1]) + nz * z;
        // With the edge at e a corner is nz · e less far out, where nz is below 0.
        edge = Math.min(edge, (out + ROOM) / nz);
      }
    }
  });
  return edge;
}

/** Corners that make no triangle: their keel is a point. In mm². */
const NO_TRIANGLE = 1e-12;

/** Unit normal of a triangle of a cone's side, the second point counter-clockwise from the first, the third below; it faces down. */
function outwardOf([ax, ay, az]: Point3, [bx, by, bz]: Point3, [cx, cy, cz]: Point3): Point3 | undefined {
  const [ux, uy, uz, vx, vy, vz] = [bx - ax, by - ay, bz - az, cx - ax, cy - ay, cz - az];
  const normal = [vy * uz - vz * uy, vz * ux - vx * uz, vx * uy - vy * ux];
  const length = Math.hypot(...normal);
  if (length < NO_TRIANGLE) return undefined;
  return [normal[0] / length, normal[1] / length, normal[2] / length];
}

/** The hollow's outlines, from below. */
export function hollowLevels(shape: GirdleShape, options: HollowOptions): Level[] {
  const { tolerance, around } = options;
  const bearing = bearingOf(shape, tolerance);
  const outline = girdleBeside(shape, ROOM, tolerance, "hollow");
  return [...pilotLevels(shape, bearing, options), { z: bearing.edge, outline }, { z: around.above, outline }];
}

/** The pilot alone, up past the surface, for a setter who cuts the bearing; none below a flat stone that is closed below. */
export function pilotOnly(shape: GirdleShape, options: HollowOptions): Level[] {
  const levels = pilotLevels(shape, bearingOf(shape, options.tolerance), options);
  const last = levels.at(-1);
  return last === undefined ? [] : [...levels.slice(0, -1), { ...last, z: options.around.above }];
}

/** From the lowest end up to where the bearing's cone begins; nothing below a flat stone that is closed below. */
export function pilotLevels(shape: GirdleShape, bearing: Bearing, options: HollowOptions): Level[] {
  const { width, keel, pavilion } = shape;
  const { tolerance, pilot, around } = options;
  const opening = isApart(shape, options.opening) ? undefined : options.opening;
  if (opening === undefined && pavilion === 0) return [];
  const outline = girdleBeside(shape, ROOM, tolerance, "hollow");
  const at = (size: number) => towardsKeel(outline, keel, (size * width) / (width + 2 * ROOM));
  const share = (pilot * width) / (width + 2 * ROOM);
  const cone = { z: bearing.edge - (1 - share) * bearing.depth, outline: at(pilot) };
  const floor = Math.min(floorOf(shape, around), cone.z);
  if (opening === undefined) return [{ z: floor, outline: cone.outline }, cone];
  const narrow = Math.abs(opening.size - pilot) * width > SAME_OPENING;
  const size = narrow ? opening.size : pilot;
  const step = narrow
    ? [
        { z: floor, outline: at(size) },
        { z: floor, outline: cone.outline },
      ]
    : [];
  const mouth = { edge: Math.min(opening.edge, (floor - around.bore) / 2), bore: around.bore };
  return [...mouthLevels((wider) => at(size + (2 * wider) / width), mouth), ...step, cone];
}

/** Where an opening comes out in the bore, its edge broken at 45°. */
function mouthLevels(
  outline: (wider: number) => Point2[],
  { edge, bore }: { readonly edge: number; readonly bore: number },
): Level[] {
  if (edge <= 0) return [{ z: bore - INTO_BORE, outline: outline(0) }];
  return [
    { z: bore - INTO_BORE, outline: outline(edge + INTO_BORE) },
    { z: bore + edge, outline: outline(0) },
  ];
}

/** Where a blind pilot ends: below the culet, but half way to the bore at most. */
function floorOf({ band, pavilion }: GirdleShape, { bore }: Around): number {
  const culet = -band - pavilion;
  return culet - Math.min(BELOW_CULET, (culet - bore) / 2);
}

/** Whether an opening is round below a stone that is not, so that it is a tool of its own. */
function isApart({ radius }: GirdleShape, opening: Opening | undefined): boolean {
  return opening?.round === true && radius === undefined;
}

/** A round opening below a stone of another shape, up into its pilot; undefined where there is none. */
export function roundOpening(shape: GirdleShape, { opening, around, tolerance }: HollowOptions): Level[] | undefined {
  if (opening === undefined || !isApart(shape, opening)) return undefined;
  const radius = (opening.size * shape.width) / 2;
  const corners = circleCorners(2 * radius, tolerance);
  const floor = floorOf(shape, around);
  const mouth = { edge: Math.min(opening.edge, (floor - around.bore) / 2), bore: around.bore };
  const outline = (wider: number) => circle(radius + wider, corners, "around");
  const middle = (shape.keel[0] + shape.keel[1]) / 2;
  const levels = [
    ...mouthLevels(outline, mouth),
    { z: Math.min(-shape.band, floor + INTO_PILOT), outline: outline(0) },
  ];
  return levels.map((level) => ({ ...level, outline: level.outline.map(([x, y]): Point2 => [x + middle, y]) }));
}

/** How far a round opening goes on into the pilot, mm: clear of its floor (chosen). */
const INTO_PILOT = 0.05;
