/**
 * Fills closed subpaths by their rule, and says where one crosses itself.
 */
import type { Warn } from "../base/errors.js";
import { crossesItself } from "./crosses-itself.js";
import { type GridRegion, unite } from "./polygons.js";

/**
 * The region that subpaths enclose. Warns `path-crosses-itself`.
 *
 * @param where the path's place in the document
 */
export function fillPath(
  closed: GridRegion,
  fill: "nonzero" | "evenodd" = "nonzero",
  where: string,
  warn: Warn,
): GridRegion {
  if (closed.length === 0) return [];
  const drawn = unite(closed, fill);
  if (closed.some(crossesItself)) {
    warn({
      code: "path-crosses-itself",
      message: `the path crosses itself; it was united by the fill rule ${fill}, leaving ${drawn.length} outline${drawn.length === 1 ? "" : "s"}`,
      path: where,
      hint: 'draw it without crossings, or choose "fill": "evenodd" where crossings should cut holes',
    });
  }
  return drawn;
}
