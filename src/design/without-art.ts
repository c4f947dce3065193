/**
 * A pattern without what is drawn in it: its tiles, lanes, symmetry and named shapes.
 */
import type { PatternSpec } from "./pattern/pattern.js";

/** The same pattern with every list of regions empty. */
export function withoutArt(pattern: PatternSpec): PatternSpec {
  const { lanes, ...rest } = pattern;
  const bare = bareArea(rest);
  return lanes === undefined ? bare : { ...bare, lanes: lanes.map(bareArea) };
}

function bareArea<Area extends Pick<PatternSpec, "regions" | "medallion" | "ends">>(area: Area): Area {
  const { medallion, ends } = area;
  return {
    ...area,
    regions: [],
    ...(medallion === undefined ? {} : { medallion: { ...medallion, regions: [] } }),
    ...(ends?.form === "ornament" ? { ends: { ...ends, regions: [] } } : {}),
  };
}
