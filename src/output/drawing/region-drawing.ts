/**
 * The regions of a flat tile as filled outlines.
 */
import type { DrawnTile } from "./drawn-tile.js";
import { PENS } from "./pens.js";
import { element, pathData } from "./svg.js";
import { kindOf, regionKinds } from "./tile-fills.js";
import type { TilePlace } from "./tile-place.js";

/** Each region as a path, the lowest first. */
export function drawRegions({ regions }: Pick<DrawnTile, "regions">, trace: TilePlace["trace"]): string[] {
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
