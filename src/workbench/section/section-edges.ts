/**
 * The edges of a cross-section that the strip beside it shows too: the band's, and the seat's between rails or bevels.
 */
import type { SectionNumbers } from "./section-sizes.js";

export interface SectionEdge {
  /** mm across the band from its middle, and above the bore. */
  readonly w: number;
  readonly height: number;
}

export function edgesOf({ form, sizes }: SectionNumbers): SectionEdge[] {
  const half = (sizes.width ?? 0) / 2;
  const top = sizes.thickness ?? 0;
  const inner = form === "channel" ? sizes["outside.rail"] : form === "bevelled" ? sizes["outside.bevel"] : undefined;
  const falls = form === "bevelled" ? sizes["outside.drop"] : form === "channel" ? 0 : sizes["outside.rise"];
  const both = (w: number, height: number): SectionEdge[] => [
    { w, height },
    { w: -w, height },
  ];
  return [...both(half, top - (falls ?? 0)), ...(inner === undefined ? [] : both(half - inner, top))];
}
