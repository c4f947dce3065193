/**
 * That no stone reaches into the bore, and which come nearer to it than is published as the least.
 */
import type { Profile } from "../band/profile/profile.js";
import type { Problem } from "../base/errors.js";
import { flattenSegment, segmentStart } from "../base/math/curve.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { showLength } from "../base/units.js";
import { heightsOf, type Stone } from "../gems/stone.js";
import { type AllStones, sayStone } from "./check-apart.js";
import { type Frame, intoSpace } from "./frame.js";
import { groupedBy } from "./grouped-by.js";
import type { PlacedStone } from "./placed-stone.js";
import { grown } from "./row-sizes.js";
import type { StoneShape, StoneShapes } from "./stone-shape.js";

/** Least metal from a stone to the bore, mm. */
const LEAST_BELOW = 0.5;

/** Where that is from. */
const LEAST_BELOW_SOURCE = "CAD best-practice sheet of a large US supplier";

/** Distances to the bore are known to this, mm, as far as they are under the least that is published. */
const EXACT = 1e-3;

/** How far the bore's chords may lie off it, mm. */
const FINE = 1e-4;

/** Halvings by which the largest stone that fits is found: to a 2000th of the size that does not. */
const HALVINGS = 11;

/** A stone with its least distance to the bore, mm; below 0 inside it. */
interface Below {
  readonly stone: PlacedStone;
  readonly distance: number;
}

/** The stones that reach into the bore, as problems, one for each group; warns of those near it. */
export function checkBore({ stones, names, shapes, ground }: AllStones): Problem[] {
  const known = new Map<string, number>();
  const below = stones.map((stone): Below => {
    const section = ground.band.sectionAt(stone.surface.angle);
    if (!ground.band.revolved) return { stone, distance: boreDistance(shapes.of(stone.stone), stone, section) };
    const key = turnedKey(stone);
    const distance = known.get(key) ?? boreDistance(shapes.of(stone.stone), stone, section);
    known.set(key, distance);
    return { stone, distance };
  });
  const problems: Problem[] = [];
  for (const [group, all] of groupedBy(below, ({ stone }) => stone.group)) {
    const deepest = all.reduce((least, one) => (one.distance < least.distance ? one : least));
    const said = sayStone(deepest.stone, names);
    if (deepest.distance < 0) {
      const { length } = deepest.stone.stone;
      const most = length * largestShare(deepest.stone, shapes, ground.band.sectionAt(deepest.stone.surface.angle));
      problems.push(tooDeep(deepest, said, all.filter(({ distance }) => distance < 0).length, most, group));
      continue;
    }
    const near = all.filter(({ distance }) => distance < LEAST_BELOW - EXACT);
    if (near.length === 0) continue;
    ground.warn({
      code: "stones-near-bore",
      message:
        near.length > 1
          ? `${said} comes to ${showLength(deepest.distance)} from the bore, the nearest of ${near.length}`
          : `${said} comes to ${showLength(deepest.distance)} from the bore`,
      path: `stones[${group}].size`,
      value: Number(deepest.distance.toFixed(3)),
      allowed: `at least ${showLength(LEAST_BELOW)} (${LEAST_BELOW_SOURCE})`,
      hint: "make the band thicker or the stones smaller, or set them higher",
    });
  }
  return problems;
}

/** What of a stone's place on a band of revolution its distance to the bore depends on. */
function turnedKey({ stone, surface, level, along, out }: PlacedStone): string {
  // Where its length points beside the finger axis, whatever the angle: the part along the axis, and round it.
  const { length, width, narrow, cut, proportions } = stone;
  const round = Math.cos(surface.angle) * along[1] - Math.sin(surface.angle) * along[0];
  const turned = [along[2], round, out[2]].map((value) => Number(value.toFixed(KEY_DIGITS)));
  return JSON.stringify([cut, length, width, narrow, proportions, surface.name, surface.v, level, turned]);
}

/** Decimals of directions that tell stones apart; 1e-6 turns the end of a stone of 10 mm by 10 nm. */
const KEY_DIGITS = 6;

/** Least distance of a stone in its place to the bore, mm, to 1e-3; below 0 inside it. Over the published least it is no more than that at least. */
export function boreDistance(shape: StoneShape, frame: Frame, section: Profile): number {
  const bore = boreLine(section);
  const at = (point: Point3) => signedDistance(bore, intoSpaceOfSection(frame, point));
  let least = shape.points.reduce((best, point) => Math.min(best, at(point)), Number.POSITIVE_INFINITY);
  const open: (readonly [Point3, Point3, Point3])[] = shape.facets.flatMap((ring) =>
    ring.slice(2).map((corner, i) => [shape.points[ring[0]], shape.points[ring[i + 1]], shape.points[corner]] as const),
  );
  // No distance changes faster than the place it is taken at, so what lies round a triangle's middle is bounded by it.
  for (let triangle = open.pop(), i = 0; triangle !== undefined && i < MOST_TRIANGLES; triangle = open.pop(), i++) {
    const middle = meanOf(triangle);
    const reach = Math.max(...triangle.map((corner) => apart(corner, middle)));
    const here = at(middle);
    least = Math.min(least, here);
    if (here - reach < Math.min(least, LEAST_BELOW) - EXACT) open.push(...quartered(triangle));
  }
  return least;
}

/** Triangles that are looked at of one stone; some hundred are enough. */
const MOST_TRIANGLES = 100_000;

/** The bore's line across the band, from low w to high w, in (w, r). */
function boreLine({ boreFace, width, boreRadius }: Profile): readonly Point2[] {
  if (boreFace.length === 0) {
    return [
      [-width / 2, boreRadius],
      [width / 2, boreRadius],
    ];
  }
  return [segmentStart(boreFace[0]), ...boreFace.flatMap((segment) => flattenSegment(segment, FINE))];
}

function intoSpaceOfSection(frame: Frame, point: Point3): Point2 {
  const [x, y, z] = intoSpace(frame, point);
  return [z, Math.hypot(x, y)];
}

/** Distance of a point of the half plane from the bore's line, below 0 on the finger's side; beyond its ends it goes on level. */
function signedDistance(line: readonly Point2[], [w, r]: Point2): number {
  let least = Number.POSITIVE_INFINITY;
  const last = line.length - 1;
  let [radius, isFound] = [w < line[0][0] ? line[0][1] : line[last][1], w < line[0][0] || w > line[last][0]];
  if (isFound) least = Math.abs(r - radius);
  for (let i = 0; i < last; i++) {
    const [[aw, ar], [bw, br]] = [line[i], line[i + 1]];
    const [dw, dr] = [bw - aw, br - ar];
    const share = Math.min(1, Math.max(0, ((w - aw) * dw + (r - ar) * dr) / (dw * dw + dr * dr)));
    least = Math.min(least, Math.hypot(w - aw - share * dw, r - ar - share * dr));
    if (isFound || w > bw) continue;
    radius = ar + ((w - aw) / dw) * dr;
    isFound = true;
  }
  return r < radius ? -least : least;
}

function quartered([a, b, c]: readonly [Point3, Point3, Point3]): (readonly [Point3, Point3, Point3])[] {
  const [ab, bc, ca] = [half(a, b), half(b, c), half(c, a)];
  return [
    [a, ab, ca],
    [ab, b, bc],
    [ca, bc, c],
    [ab, bc, ca],
  ];
}

function half(a: Point3, b: Point3): Point3 {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
}

function meanOf([a, b, c]: readonly [Point3, Point3, Point3]): Point3 {
  return [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3];
}

function apart(a: Point3, b: Point3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** By which share of its size the stone would just clear the bore, its table as high over the surface; 0 where none does. */
function largestShare(placed: PlacedStone, shapes: StoneShapes, section: Profile): number {
  const crown = heightsOf(placed.stone).crown;
  const clears = (share: number) => {
    const stone: Stone = grown(placed.stone, share);
    const by = crown - heightsOf(stone).crown;
    const at = placed.at.map((value, k) => value + by * placed.out[k]) as unknown as Point3;
    return boreDistance(shapes.of(stone), { ...placed, at }, section) >= 0;
  };
  let [low, high] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (clears(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Digits after the point to which the largest size is told, mm; rounded down. */
const SIZE_STEPS = 100;

function tooDeep({ stone, distance }: Below, said: string, count: number, most: number, group: number): Problem {
  const size = Math.floor(most * SIZE_STEPS) / SIZE_STEPS;
  const by = showLength(-distance);
  return {
    code: "stone-too-deep",
    message:
      count > 1
        ? `${said} reaches ${by} into the bore, the deepest of ${count}`
        : `${said} reaches ${by} into the bore`,
    path: `stones[${group}].size`,
    value: stone.stone.length,
    allowed: size > 0 ? `at most ${showLength(size)} as it is cut and set` : "none in this band",
    hint: "take a smaller or shallower stone, set it higher, or make the band thicker",
  };
}
