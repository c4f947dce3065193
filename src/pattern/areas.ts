/**
 * The parts of a pattern that have regions: its tiles, its medallion, its ornaments.
 */
import type { PatternSpec, RegionSpec } from "./schema.js";

/** Regions and where their owner stands in the document. */
export interface RegionsOf {
  readonly regions: readonly RegionSpec[];
  readonly where: string;
}

/** All of them. */
export function regionLists({ regions, medallion, ends }: PatternSpec): RegionsOf[] {
  return [
    { regions, where: "pattern" },
    ...(medallion === undefined ? [] : [{ regions: medallion.regions, where: "pattern.medallion" }]),
    ...(ends?.form === "ornament" ? [{ regions: ends.regions, where: "pattern.ends" }] : []),
  ];
}
