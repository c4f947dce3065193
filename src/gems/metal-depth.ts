/**
 * How deep the metal must be where a faceted stone is set level with it.
 */
import type { StoneHeights } from "./stone.js";

/** A depth with where it is from. */
export interface MetalDepth {
  /** mm, from the surface down. */
  readonly depth: number;
  /** What it is for. */
  readonly what: string;
  readonly source: string;
}

/** Below the culet of a flush set stone, mm. */
const UNDER_FLUSH = 0.2;

/** From culet to bore, mm. */
const ABOVE_BORE = 0.5;

/** The least depths that are published, from a surface that is level with the table. */
export function metalDepths({ depth }: StoneHeights): readonly MetalDepth[] {
  return [
    {
      depth: depth + UNDER_FLUSH,
      what: `flush set, the culet ${UNDER_FLUSH} mm inside`,
      source: "orchid.ganoksin.com 34008",
    },
    {
      depth: depth + ABOVE_BORE,
      what: `culet to bore at least ${ABOVE_BORE} mm`,
      source: "CAD best-practice sheet of a US supplier (fdocuments.net)",
    },
  ];
}
