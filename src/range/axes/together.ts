/**
 * Which values of the axes meet in a variant: all with all, the first with the first, or some of all by a seed.
 */
import { AnnuletError } from "../../base/errors.js";
import { seeded } from "../../base/math/seeded.js";
import type { Plan } from "../plan/plan-schema.js";
import type { Axis } from "./axis.js";

/** Most variants of one plan. Chosen: a shop's offer for a day of many machines; more is a slip of the pen. */
const MOST_VARIANTS = 1_000_000;

/** Most of a grid that is sampled from: places are counted in whole numbers (IEEE 754). */
const MOST_SAMPLED_FROM = 2 ** 53;

/** How the variants of a plan are counted. */
export interface Together {
  readonly count: number;
  /** Which value of each axis the variant of a number takes, from 0. */
  at(number: number): readonly number[];
}

/**
 * Nothing of a variant is made.
 *
 * @throws AnnuletError `too-many-variants` with their number; `axes-uneven` where axes that are paired are not equally long
 */
export function putTogether(together: Plan["together"], axes: readonly Axis[]): Together {
  if (together === "paired") return pair(axes);
  const all = axes.reduce((product, { length }) => product * length, 1);
  const grid = { count: all, at: (number: number) => placesOf(number, axes) };
  if (together === "grid") {
    requireFew(all);
    return grid;
  }
  return sample(grid, together);
}

function pair(axes: readonly Axis[]): Together {
  const [{ length }] = axes;
  const other = axes.find((axis) => axis.length !== length);
  if (other !== undefined) {
    throw new AnnuletError({
      code: "axes-uneven",
      message: `${other.names.join(" and ")} has ${other.length} values where ${axes[0].names.join(" and ")} has ${length}`,
      path: "together",
      value: axes.map((axis) => axis.length),
      allowed: "paired axes of as many values each",
      hint: 'give each as many, or say "together": "grid"',
    });
  }
  requireFew(length);
  return { count: length, at: (number) => axes.map(() => number) };
}

/** Of a grid the last axis changes first. */
function placesOf(number: number, axes: readonly Axis[]): readonly number[] {
  let left = number;
  return axes
    .toReversed()
    .map(({ length }) => {
      const place = left % length;
      left = Math.floor(left / length);
      return place;
    })
    .reverse();
}

function sample(grid: Together, { sampled, seed }: { readonly sampled: number; readonly seed: number }): Together {
  requireFew(sampled);
  if (grid.count > MOST_SAMPLED_FROM) throw tooMany(grid.count, MOST_SAMPLED_FROM);
  if (sampled >= grid.count) {
    requireFew(grid.count);
    return grid;
  }
  const numbers = [...draw(sampled, grid.count, seed)].sort((a, b) => a - b);
  return { count: sampled, at: (number) => grid.at(numbers[number]) };
}

const WORDS = 2 ** 32;

/**
 * Different numbers below `all`, every choice as likely as any other (R. Floyd, in J. Bentley, Programming Pearls,
 * Communications of the ACM 30, 1987): one draw for each, however many are drawn.
 */
function draw(count: number, all: number, seed: number): ReadonlySet<number> {
  const drawn = new Set<number>();
  for (let i = 0; i < count; i++) {
    const last = all - count + i;
    const share = seeded(seed, i, 0) + seeded(seed, i, 1) / WORDS;
    const number = Math.min(last, Math.floor(share * (last + 1)));
    drawn.add(drawn.has(number) ? last : number);
  }
  return drawn;
}

function requireFew(count: number): void {
  if (!(count <= MOST_VARIANTS)) throw tooMany(count, MOST_VARIANTS);
}

function tooMany(count: number, most: number): AnnuletError {
  const said = Number.isSafeInteger(count) ? String(count) : count.toExponential(2);
  return new AnnuletError({
    code: "too-many-variants",
    message: `the plan comes to ${said} variants`,
    path: "vary",
    value: count,
    allowed: `at most ${most}`,
    hint: 'take larger steps, or some of them: "together": {"sampled": 1000}',
  });
}
