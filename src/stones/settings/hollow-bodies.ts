/**
 * The bodies of one stone's hollow: the hollow itself, and a round opening below a stone that is not round.
 */
import type { Mesh } from "../../mesh/mesh.js";
import type { GirdleShape } from "./girdle-shape.js";
import { type HollowOptions, roundOpening } from "./hollow.js";
import { type Level, stackOutlines } from "./stacked.js";

/** @param levels of the hollow; none where nothing is cut but the opening */
export function hollowBodies(levels: readonly Level[], shape: GirdleShape, options: HollowOptions): Mesh[] {
  const opening = roundOpening(shape, options);
  return [levels, opening ?? []].flatMap((some) => (some.length < 2 ? [] : [stackOutlines(some)]));
}
