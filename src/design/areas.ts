/**
 * The parts of a pattern that have regions: in each lane its tiles, its medallion, its ornaments.
 */
import { lanesOf } from "./lanes.js";
import type { PatternSpec } from "./pattern/pattern.js";
import type { RegionSpec } from "./pattern/region.js";

/** Regions and where their owner stands in the document. */
export interface RegionsOf {
  readonly regions: readonly RegionSpec[];
  readonly where: string;
}

/** All of them. */
export function regionLists(pattern: PatternSpec): RegionsOf[] {
  return lanesOf(pattern).flatMap(({ where, regions, medallion, ends }) => [
    { regions, where },
    ...(medallion === undefined ? [] : [{ regions: medallion.regions, where: `${where}.medallion` }]),
    ...(ends?.form === "ornament" ? [{ regions: ends.regions, where: `${where}.ends` }] : []),
  ]);
}
