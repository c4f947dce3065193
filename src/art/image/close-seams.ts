/**
 * An image's ends, where they meet other tiles or each other: checked, or blended; mirrors make them meet.
 */

import type { MapSpec } from "../../design/art/image-map.js";
import { blendSeam, requireSeam } from "./blend-seam.js";
import { type Frame, isMirrored, type ReadFieldOptions } from "./frame.js";
import { type NumberGrid, transpose } from "./number-grid.js";

/**
 * The heights with their ends seen to.
 *
 * @throws AnnuletError `image-seam`
 */
export function closeSeams(
  pixels: NumberGrid,
  { seam }: MapSpec,
  frame: Frame,
  name: string,
  { strip, tolerance, path }: ReadFieldOptions,
): NumberGrid {
  const { tileWidth, tileHeight, rows } = strip;
  const { tiles, repeats, right } = frame;
  const once = tiles === undefined;
  const close = (grid: NumberGrid, period: number, along: boolean, ends: string): NumberGrid => {
    if (seam !== "exact") return blendSeam(grid, Math.min(1, seam.blend / period));
    if (!isMirrored(strip, frame, along)) requireSeam(grid, { tolerance, ends, name, path: `${path}.map.seam` });
    return grid;
  };
  const meets = repeats || (!once && strip.repeats > 1);
  const level = meets ? close(pixels, once ? right : tileWidth, false, "left and right ends") : pixels;
  if (once || rows === 1) return level;
  return transpose(close(transpose(level), tileHeight, true, "upper and lower ends"));
}
