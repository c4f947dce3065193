/**
 * The stone that a group of the document means.
 */
import { AnnuletError } from "../base/errors.js";
import type { StoneGroupSpec } from "../design/stones/stone-group.js";
import type { Gem } from "../gems/gem.js";
import type { Stone } from "../gems/stone.js";
import { stoneOf } from "../gems/stone-of.js";

/**
 * @param where the group's place in the document
 * @throws AnnuletError `gem-unknown`, `stone-size`, `proportions-invalid`, `proportions-cannot-close`, at their fields
 */
export function readStone(
  { cut, size, width, narrow, gem, proportions }: StoneGroupSpec,
  gems: ReadonlyMap<string, Gem>,
  where: string,
): Stone {
  try {
    const facts = stoneOf({ cut, size, width, narrow, gem, proportions }, { gems: [...gems.values()] });
    const { length, width: across, narrow: end, proportions: shares } = facts;
    const stone = { cut, length, width: across, proportions: shares, gem };
    return end === undefined ? stone : { ...stone, narrow: end };
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    throw new AnnuletError(error.problems.map((problem) => ({ ...problem, path: `${where}.${problem.path}` })));
  }
}
