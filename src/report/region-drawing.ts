/**
 * The regions of a flat tile as filled outlines.
 */
import type { FlatTile } from "../flat-tile.js";
import { PENS } from "./drawing/pens.js";
import { element, pathData } from "./drawing/svg.js";
import type { TilePlace } from "./drawing/tile-place.js";
import { kindOf, regionKinds } from "./tile-fills.js";

/** Each region as a path, the lowest first. */
export function drawRegions({ regions }: Pick<FlatTile, "regions">, trace: TilePlace["trace"]): string[] {
  const kinds = regionKinds(regions);
  return regions.map((region) =>
    element("path", {
      class: "region",
      "data-names": region.names.join(", "),
      "data-height": region.height,
      d: pathData(
        region.rings.map((ring) => trace([...ring, ring[0]])),
        true,
      ),
      ...PENS.fine,
      fill: kindOf(kinds, region).fill,
      "fill-rule": "evenodd",
    }),
  );
}
