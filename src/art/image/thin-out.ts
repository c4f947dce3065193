/**
 * Triangles over a height field, few where it is flat.
 *
 * Right triangles are halved at the middle of their longest side as long as the surface there is not flat enough
 * (Evans, Kirkpatrick and Townsend, Right-triangulated irregular networks, 2001; from memory). What a middle decides is
 * the same for both triangles on the side, so no vertex lies inside another's side. The bound that is kept is a true one:
 * a triangle's own error at the middle and the larger of what its halves leave out, added up.
 */
import { BREATH, finish, type Pausing } from "../../base/pausing.js";
import { BLOCK, type HeightField } from "./height-field.js";

/** Places in a block: [x, y] of the ends of the longest side, of the corner across from it. */
interface Half {
  readonly a: Place;
  readonly b: Place;
  readonly apex: Place;
}

type Place = readonly [x: number, y: number];

/** Four triangles about the middle of a block, their longest sides on its border, counter-clockwise. */
const ROOTS: readonly Half[] = (() => {
  const corners: readonly Place[] = [
    [0, 0],
    [BLOCK, 0],
    [BLOCK, BLOCK],
    [0, BLOCK],
  ];
  return corners.map((a, i) => ({ a, b: corners[(i + 1) % 4], apex: [BLOCK / 2, BLOCK / 2] as const }));
})();

/** Triangles by how often they were halved. */
const LEVELS: readonly (readonly Half[])[] = (() => {
  const levels = [ROOTS];
  for (;;) {
    const next = levels[levels.length - 1].filter(canHalve).flatMap(halves);
    if (next.length === 0) return levels;
    levels.push(next);
  }
})();

function canHalve({ a, b }: Half): boolean {
  return (a[0] + b[0]) % 2 === 0 && (a[1] + b[1]) % 2 === 0;
}

function middleOf({ a, b }: Half): Place {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** Both halves, with the turning sense of the whole. */
function halves(half: Half): [Half, Half] {
  const middle = middleOf(half);
  return [
    { a: half.apex, b: half.a, apex: middle },
    { a: half.b, b: half.apex, apex: middle },
  ];
}

/**
 * The triangles, as places in the field's heights, counter-clockwise. What is not above the level counts as level ground;
 * wherever it meets what is there, and along the field's borders, the triangles are the smallest. So whatever is there of
 * two fields that differ in nothing but the height of it has the same outline, point by point.
 *
 * @param tolerance mm
 */
export function thinOut(field: HeightField, tolerance: number): number[] {
  return finish(thinningOut(field, tolerance));
}

/** The same in pieces. */
export function* thinningOut(field: HeightField, tolerance: number): Pausing<number[]> {
  const errors = yield* errorsOf(field);
  const stride = field.columns + 1;
  const triangles: number[] = [];
  for (let y = 0; y < field.rows; y += BLOCK) {
    yield BREATH;
    for (let x = 0; x < field.columns; x += BLOCK) {
      const place = ([px, py]: Place) => (y + py) * stride + x + px;
      const add = (half: Half): void => {
        if (canHalve(half) && errors[wrapped(field, place(middleOf(half)))] > tolerance) halves(half).forEach(add);
        else triangles.push(place(half.a), place(half.b), place(half.apex));
      };
      ROOTS.forEach(add);
    }
  }
  return triangles;
}

/** The same place in the first column for one in the last column of a field that repeats. */
function wrapped({ columns, repeats }: HeightField, place: number): number {
  return repeats && place % (columns + 1) === columns ? place - columns : place;
}

/** For each place that is the middle of a side, how far the surface may be off where that side is not halved. */
function* errorsOf(field: HeightField): Pausing<Float64Array> {
  const { columns, rows, heights, level } = field;
  const errors = new Float64Array(heights.length);
  const stride = columns + 1;
  const heightAt = (place: number) => (heights[place] > level ? heights[place] : 0);
  for (const halvesOfLevel of LEVELS.toReversed()) {
    for (const half of halvesOfLevel.filter(canHalve)) {
      yield BREATH;
      const offset = ([x, y]: Place) => y * stride + x;
      const [a, b, apex] = [offset(half.a), offset(half.b), offset(half.apex)];
      const [mx, my] = middleOf(half);
      const middle = offset([mx, my]);
      const inner = halves(half)
        .filter(canHalve)
        .map((one) => offset(middleOf(one)));
      for (let y = 0; y < rows; y += BLOCK) {
        for (let x = 0; x < columns; x += BLOCK) {
          const origin = y * stride + x;
          const [ha, hb, hm] = [heightAt(origin + a), heightAt(origin + b), heightAt(origin + middle)];
          const there = hm > 0;
          const mixed = ha > 0 !== there || hb > 0 !== there || heightAt(origin + apex) > 0 !== there;
          const own =
            mixed || onBorder(field, x + mx, y + my) ? Number.POSITIVE_INFINITY : Math.abs(hm - (ha + hb) / 2);
          let left = 0;
          for (const one of inner) left = Math.max(left, errors[wrapped(field, origin + one)]);
          const at = wrapped(field, origin + middle);
          errors[at] = Math.max(errors[at], own + left);
        }
      }
    }
  }
  return errors;
}

/** Whether a sample lies on a border of the field at which nothing goes on. */
function onBorder({ columns, rows, repeats }: HeightField, x: number, y: number): boolean {
  return y === 0 || y === rows || (!repeats && (x === 0 || x === columns));
}
