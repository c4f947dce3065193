/**
 * The kinds of a tile's regions that a drawing tells apart by their fill: each height, each depth, and what goes through.
 */
import type { FlatRegion } from "./drawn-tile.js";
import { COLOURS, rampFill } from "./pens.js";

/** Regions of one mode and height. */
export interface RegionKind {
  readonly mode: FlatRegion["mode"];
  readonly height: number | undefined;
  readonly names: readonly string[];
  readonly fill: string;
}

/** The kinds, highest first, what goes through last. */
export function regionKinds(regions: readonly FlatRegion[]): RegionKind[] {
  const heights = (mode: FlatRegion["mode"]) =>
    [...new Set(regions.filter((one) => one.mode === mode).map(({ height }) => height ?? 0))].sort((a, b) => b - a);
  const kind = (mode: FlatRegion["mode"], height: number | undefined, fill: string): RegionKind => {
    const names = regions.filter((one) => one.mode === mode && one.height === height).flatMap((one) => one.names);
    return { mode, height, names: [...new Set(names)], fill };
  };
  const [raised, sunk] = [heights("raised"), heights("sunk")];
  return [
    ...raised.map((height, i) => kind("raised", height, rampFill("raised", raised.length - 1 - i, raised.length))),
    ...sunk.map((height, i) => kind("sunk", height, rampFill("sunk", i, sunk.length))),
    ...(heights("pierced").length > 0 ? [kind("pierced", undefined, COLOURS.hole)] : []),
  ];
}

/** The kind that a region is of. */
export function kindOf(kinds: readonly RegionKind[], { mode, height }: FlatRegion): RegionKind {
  return kinds.find((one) => one.mode === mode && one.height === height) as RegionKind;
}
