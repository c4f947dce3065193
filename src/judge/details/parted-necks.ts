/**
 * Short necks of a region: places at which a part falls apart when the region is shrunk.
 */
import { ringBox } from "../../flat/box.js";
import type { GridPath, GridPoint } from "../../flat/grid.js";
import { contains, type GridRegion, intersect, offset, ringArea } from "../../flat/polygons.js";

/** Parts that are grown back by this many times what they were shrunk by meet across a neck as short as it is wide. */
const BACK = 1.1;

/**
 * The middles of necks narrower than `width` grid steps and about as short.
 *
 * @param shrunk the region shrunk by half of that
 */
export function partedNecks(region: GridRegion, shrunk: GridRegion, width: number): GridPoint[] {
  const owners = region.filter((ring) => ringArea(ring) > 0).sort((a, b) => ringArea(a) - ringArea(b));
  const parts = new Map<GridPath, GridPath[]>();
  for (const part of shrunk.filter((ring) => ringArea(ring) > 0)) {
    const owner = owners.find((ring) => contains(ring, part[0]));
    if (owner !== undefined) parts.set(owner, [...(parts.get(owner) ?? []), part]);
  }
  return [...parts.values()].flatMap((own) => (own.length > 1 ? meetings(own, region, width) : []));
}

/** Where parts meet within the region when they are grown back. */
function meetings(parts: readonly GridPath[], region: GridRegion, width: number): GridPoint[] {
  const reach = (BACK * width) / 2;
  const grown = parts.map((part) => ({ box: ringBox(part), rings: offset([part], reach, "round", width / 100) }));
  return grown.flatMap((a, i) =>
    grown.slice(i + 1).flatMap((b) => {
      const apart =
        Math.max(a.box.left, b.box.left) - Math.min(a.box.right, b.box.right) > 2 * reach ||
        Math.max(a.box.low, b.box.low) - Math.min(a.box.high, b.box.high) > 2 * reach;
      if (apart) return [];
      const common = intersect(intersect(a.rings, b.rings), region).filter((ring) => ringArea(ring) > 0);
      return common.map((ring): GridPoint => {
        const { left, right, low, high } = ringBox(ring);
        return { x: (left + right) / 2, y: (low + high) / 2 };
      });
    }),
  );
}
