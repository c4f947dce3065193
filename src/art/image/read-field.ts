/**
 * An image laid over the seat: pixels become samples of a height field.
 */
import { AnnuletError } from "../../base/errors.js";
import { BREATH, finish, type Pausing } from "../../base/pausing.js";
import { showLength } from "../../base/units.js";
import { MAP_DEFAULTS, type MapSpec } from "../../design/art/image-map.js";
import type { RegionSpec } from "../../design/pattern/region.js";
import { closeSeams } from "./close-seams.js";
import { fallAtEdges } from "./fall.js";
import { frameOf, type ReadFieldOptions, warnStretch } from "./frame.js";
import type { HeightField } from "./height-field.js";
import { pixelHeights } from "./heights.js";
import type { Picture } from "./read-picture.js";
import { sampleField } from "./sample-field.js";
import { settle } from "./settle.js";

/**
 * The height field of an image.
 *
 * @throws AnnuletError `resolution-too-fine`, `image-seam`, `image-blank` where nothing of it is there
 */
export function readField(spec: RegionSpec, picture: Picture, options: ReadFieldOptions): HeightField {
  return finish(readingField(spec, picture, options));
}

/** The same in pieces. */
export function* readingField(spec: RegionSpec, picture: Picture, options: ReadFieldOptions): Pausing<HeightField> {
  const { strip, path } = options;
  const map: MapSpec = spec.map ?? MAP_DEFAULTS;
  const frame = frameOf(spec, map, options);
  warnStretch(frame, picture, options);
  const span = (spec.mode === "sunk" ? spec.depth : spec.height) ?? 0;
  const pixels = closeSeams(pixelHeights(picture, span, map, spec.mode === "sunk"), map, frame, picture.name, options);
  yield BREATH;
  const heights = yield* sampleField(pixels, frame, strip, map.smooth ?? Math.max(...frame.step));
  yield BREATH;
  const { step, tiles, on, ...place } = frame;
  const field = settle({ ...place, heights: fallAtEdges(heights, spec, map, frame, options.underRail).data });
  if (field.heights.some((height) => height > field.level)) return field;
  throw new AnnuletError({
    code: "image-blank",
    message: `nothing of ${picture.name} is there: no place is higher than ${showLength(field.level)}`,
    path: `${path}.image`,
    hint: "give the map a base, invert it, or make it less transparent",
  });
}
