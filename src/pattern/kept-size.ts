/**
 * Tiles that keep their size on a band that tapers: each area is cut off at the seat's edge where it stands.
 */
import { FULL_COVER, type LaneFit } from "../band/fit/fit.js";
import { AnnuletError } from "../base/errors.js";
import type { Pausing } from "../base/pausing.js";
import type { Lane } from "../design/lanes.js";
import { inverseOf, type Motion, movedAlong, STAY } from "../flat/motion.js";
import type { Area } from "./complete-area.js";
import type { Pattern } from "./laid-out.js";
import { joinPatterns, placePattern } from "./move.js";

export interface AtPlaces {
  /** Of the whole lane. */
  readonly fit: LaneFit;
  /** As `seatLengths`; undefined where nothing is cut off. */
  readonly lengths: readonly number[] | undefined;
  /** Completes the area, in its own coordinates. */
  readonly complete: (area: Area) => Pausing<Pattern>;
}

/** An area at its places: completed once where it is the same at all, and for each where the seat cuts it off. */
export function* completeAt(
  area: Area,
  places: readonly Motion[],
  { fit, lengths, complete }: AtPlaces,
): Pausing<Pattern> {
  if (lengths === undefined) return placed(yield* complete(area), places);
  const covered = fit.repeats * fit.tileWidth;
  const round = (covered * FULL_COVER) / fit.cover;
  const patterns: Pattern[] = [];
  for (const motion of places) {
    const outline = { lengths, round, top: movedAlong(covered / 2, inverseOf(motion)), mirrored: motion.mirrored };
    patterns.push(placed(yield* complete({ ...area, outline }), [motion]));
  }
  return patterns.length === 1 ? patterns[0] : joinPatterns(patterns);
}

function placed(pattern: Pattern, places: readonly Motion[]): Pattern {
  const [{ u, v, mirrored }] = places;
  const stays = places.length === 1 && u === STAY.u && v === STAY.v && mirrored === STAY.mirrored;
  return stays ? pattern : placePattern(pattern, places);
}

/**
 * What is cut off at the seat's edge are outlines: bridges of a weave and heights of an image or a texture have none there.
 *
 * @throws AnnuletError `cannot-keep-size` on lanes, weaves, images and textures
 */
export function requireCuttable(lanes: readonly Lane[]): void {
  const complain = (what: string, path: string, hint: string) => {
    return new AnnuletError({
      code: "cannot-keep-size",
      message: `on a band that tapers ${what} cannot be cut off at the seat's edge`,
      path,
      allowed: '"narrow" in pattern.fit.taper; "keep" on one pattern without lanes, weaves, images and textures',
      hint,
    });
  };
  if (lanes.length > 1) throw complain("lanes", "pattern.lanes", 'say "taper": "narrow", or draw one pattern');
  const [{ where, regions, medallion, ends }] = lanes;
  const lists = [
    { at: where, all: regions },
    { at: `${where}.medallion`, all: medallion?.regions ?? [] },
    { at: `${where}.ends`, all: ends?.form === "ornament" ? ends.regions : [] },
  ];
  for (const { at, all } of lists) {
    all.forEach(({ image, texture, ribbon, beneath }, i) => {
      const hint = 'say "taper": "narrow", or leave it out';
      if (beneath === true) throw complain("relief beneath the rails", `${at}.regions[${i}].beneath`, hint);
      if (image !== undefined) throw complain("a height map", `${at}.regions[${i}].image`, hint);
      if (texture !== undefined) throw complain("a texture", `${at}.regions[${i}].texture`, hint);
      if (ribbon?.weave !== undefined) throw complain("a weave", `${at}.regions[${i}].ribbon.weave`, hint);
    });
  }
}
