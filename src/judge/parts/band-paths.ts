/**
 * Where the document says what each part of the band is like.
 */
import type { SectionPart } from "../../band/profile/section-parts.js";

export const BAND_PATHS: Readonly<Record<SectionPart, string>> = {
  seat: "profile.outside",
  outside: "profile.outside",
  rail: "profile.outside.rail",
  step: "profile.step",
  side: "profile.width",
  bore: "profile.bore",
};

/** The parts of the band that a place in the document tells of, the nearest place first; none for other places. */
export function bandPartsOf(path: string): readonly SectionPart[] {
  const found = OF_PLACES.find(([place]) => isWithin(path, place));
  return found?.[1] ?? [];
}

const OF_PLACES: readonly (readonly [place: string, parts: readonly SectionPart[]])[] = [
  ["profile.outside.rail", ["rail"]],
  ["profile.outside.depth", ["rail"]],
  ["profile.outside", ["seat", "outside", "rail"]],
  ["profile.step", ["step"]],
  ["profile.width", ["side"]],
  ["profile.thickness", ["side"]],
  ["profile.bore", ["bore"]],
];

/** Whether a place in the document lies in another, or is it; both as errors name them. */
export function isWithin(path: string, outer: string): boolean {
  return path === outer || path.startsWith(`${outer}.`) || path.startsWith(`${outer}[`);
}
