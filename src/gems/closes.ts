/**
 * Whether proportions give a closed stone, and which would.
 */
import { AnnuletError } from "../base/errors.js";
import { bulgeOf } from "./bulge.js";
import { CannotClose } from "./cannot-close.js";
import type { Cut, StoneSize } from "./cut.js";
import type { Proportions } from "./stone.js";

/** Steps in which a share is looked for that would do; chosen. */
const STEP = 0.01;

/** Widest share that is looked at. */
const MOST = 1;

/** Corners of a girdle need not be many to see whether the facets close: mm on a stone of 1 mm. */
const COARSE = 0.02;

/** How far a corner must lie below every facet that it is no corner of, mm on a stone of 1 mm: so that no two are one plane. */
const LEAST_ANGLE = 1e-9;

/**
 * Throws unless the facets of a stone close as one convex body, every one of them there.
 *
 * @throws AnnuletError `proportions-cannot-close`, telling which other value of each share would do
 */
export function requireCloses(cut: Cut, size: StoneSize, proportions: Proportions, path: string): void {
  const why = whyNot(cut, size, proportions);
  if (why === undefined) return;
  const ways = waysOut(cut, size, proportions);
  throw new AnnuletError({
    code: "proportions-cannot-close",
    message: `the facets do not close: ${why}`,
    path,
    value: proportions,
    allowed:
      ways.length === 0 ? "other values of several shares" : `one of, with the others as they are: ${ways.join("; ")}`,
    hint: 'leave them out, or take "usual"',
  });
}

/** Why a stone does not close; undefined where it does. Works on the stone at a width of 1 mm. */
function whyNot(cut: Cut, { length, width, narrow }: StoneSize, proportions: Proportions): string | undefined {
  const unit = { length: length / width, width: 1, ...(narrow === undefined ? {} : { narrow: narrow / width }) };
  try {
    const { above } = bulgeOf(cut.facets(unit, proportions, COARSE));
    return above < -LEAST_ANGLE ? undefined : "a facet is cut away by its neighbours";
  } catch (error) {
    if (error instanceof CannotClose) return error.message;
    throw error;
  }
}

/** For each share by itself, the values nearest to its own that close, in words. */
function waysOut(cut: Cut, size: StoneSize, proportions: Proportions): string[] {
  const shares = Object.keys(proportions) as (keyof Proportions)[];
  return shares.flatMap((share) => {
    const does = (value: number) => whyNot(cut, size, { ...proportions, [share]: value }) === undefined;
    const values = Array.from({ length: MOST / STEP - 1 }, (_, i) => (i + 1) * STEP).filter(does);
    if (values.length === 0) return [];
    const [least, most] = [Math.min(...values), Math.max(...values)];
    return [`${share} ${least.toFixed(2)} to ${most.toFixed(2)}`];
  });
}
