/**
 * Fills closed subpaths by their rule, and says where one crosses itself.
 */
import type { Warn } from "../base/errors.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
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
  return finish(fillingPath(closed, fill, where, warn));
}

/** The same in pieces: each subpath by itself, and all together. */
export function* fillingPath(
  closed: GridRegion,
  fill: "nonzero" | "evenodd" = "nonzero",
  where: string,
  warn: Warn,
): Pausing<GridRegion> {
  if (closed.length === 0) return [];
  const drawn = unite(closed, fill);
  const alone = closed.length === 1 && fill === "nonzero" ? drawn : undefined;
  let crosses = false;
  for (const path of closed) {
    yield BREATH;
    crosses ||= crossesItself(path, alone);
  }
  if (crosses) {
    warn({
      code: "path-crosses-itself",
      message: `the path crosses itself; it was united by the fill rule ${fill}, leaving ${drawn.length} outline${drawn.length === 1 ? "" : "s"}`,
      path: where,
      hint: 'draw it without crossings, or choose "fill": "evenodd" where crossings should cut holes',
    });
  }
  return drawn;
}
