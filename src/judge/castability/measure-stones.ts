/**
 * What castability asks of stones and their settings.
 */
import type { StoneRule } from "../../design/rules/rule-set.js";
import { ToldStones } from "../proof/stones/told-stones.js";
import { measureStoneSizes } from "./measure-stone-sizes.js";
import { measureStoneWalls, type SolidRays } from "./measure-stone-walls.js";
import type { JudgedPiece, Measured } from "./piece.js";

export type StoneMeasures = Readonly<Partial<Record<StoneRule, Measured | undefined>>>;

/** Gaps between girdles are looked for as far as the limit, and at least so far, mm: what is kept has a figure too (chosen). */
const GAPS = 0.5;

/** @param limit of gaps between girdles, mm */
export function measureStones(piece: JudgedPiece, rays: SolidRays, limit: number): StoneMeasures {
  const { stones, profile, tolerance } = piece;
  if (stones.stones.length === 0) return {};
  const told = new ToldStones({ band: profile, stones: stones.stones, tolerance });
  return {
    ...measureStoneWalls(told, rays, tolerance),
    ...measureStoneSizes(stones, told, Math.max(GAPS, limit)),
  };
}
