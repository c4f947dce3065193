/**
 * How fine, coarse and low a texture may be.
 */
import { AnnuletError } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { TextureSpec } from "../../design/art/texture.js";
import type { Frame } from "../image/frame.js";

/** Fewer steps in the size of a texture would draw another. Chosen. */
const LEAST_STEPS = 4;

/** @throws AnnuletError `texture-too-fine` where samples stand too far apart for its size */
export function requireSteps({ size }: TextureSpec, { step }: Frame, path: string): void {
  const least = LEAST_STEPS * Math.max(...step);
  if (size >= least) return;
  throw new AnnuletError({
    code: "texture-too-fine",
    message: `samples of the texture stand ${showLength(Math.max(...step))} apart, which is too far for a size of ${showLength(size)}`,
    path: `${path}.texture.size`,
    value: size,
    allowed: `at least ${showLength(Math.ceil(least * 1000) / 1000)}`,
    hint: "make it larger, or give the map a finer resolution",
  });
}

/** Of the width of what comes again a texture's unit may be this share at most, and of its height. Chosen. */
const MOST_WIDTH = 1 / 2;
const MOST_HEIGHT = 2 / 3;

/**
 * @param wanted mm from one to the next
 * @param unit width and height of what comes again, mm
 * @throws AnnuletError `texture-too-coarse`
 */
export function requireRoom(
  { length, form }: TextureSpec,
  wanted: { readonly along: number; readonly across: number },
  unit: { readonly width: number; readonly height: number },
  path: string,
): void {
  const sides = [
    { asked: wanted.along, most: MOST_WIDTH * unit.width, way: "along" },
    { asked: wanted.across, most: MOST_HEIGHT * unit.height, way: "across" },
  ];
  const wide = sides.find(({ asked, most }) => asked > most);
  if (wide === undefined) return;
  const { asked, most, way } = wide;
  const isLength = asked === Math.max(wanted.along, wanted.across) && wanted.along !== wanted.across;
  throw new AnnuletError({
    code: "texture-too-coarse",
    message: `the ${form} texture is ${showLength(asked)} ${way} from one to the next, and comes again after ${showLength(unit.width)} along and ${showLength(unit.height)} across`,
    path: `${path}.texture.${isLength ? "length" : "size"}`,
    value: asked,
    allowed: `at most ${showLength(Math.floor(most * 1000) / 1000)}`,
    hint:
      isLength && length === undefined
        ? 'give it a shorter "length"'
        : 'make it smaller, or say "map": {"over": "band"}',
  });
}

/** The error for a texture of which nothing is there. */
export function tooLow(value: number, level: number, path: string): AnnuletError {
  return new AnnuletError({
    code: "texture-too-low",
    message: `nothing of the texture is there: no place is higher, or deeper, than ${showLength(level)}`,
    path,
    value,
    allowed: `above ${showLength(level)}`,
    hint: "make it deeper, the design's tolerance smaller, or the map's edge narrower",
  });
}
