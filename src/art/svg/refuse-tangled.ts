/**
 * Refuses drawings whose outlines lie across each other so often that uniting them would stall.
 */
import type { GridRegion } from "../../flat/polygons.js";
import { nearPairs } from "../../flat/tangled.js";
import { SVG_LIMITS, tooMuch } from "./svg-limits.js";

/** @param weight how often each pair of edges counts; default 1 */
export function refuseTangled(rings: GridRegion, where: string, weight = 1): void {
  if (nearPairs(rings, SVG_LIMITS.pairs / weight) * weight <= SVG_LIMITS.pairs) return;
  throw tooMuch("is too tangled: its lines lie across each other", `at most ${SVG_LIMITS.pairs} near pairs`, where);
}
