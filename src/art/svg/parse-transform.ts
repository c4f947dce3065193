/**
 * The transform attribute: matrix, translate, scale, rotate, skewX, skewY, in any number, the first outermost.
 * SVG 1.1 (Second Edition), 7.6.
 */
import { AnnuletError } from "../../base/errors.js";
import { type Affine, compose, IDENTITY, rotation, scaling, translation } from "../../base/math/affine.js";
import { radians } from "../../base/units.js";

type Make = (numbers: readonly number[]) => Affine;

/** Function → how many numbers it takes → its map. */
const FUNCTIONS: Readonly<Record<string, Readonly<Record<number, Make>>>> = {
  matrix: { 6: ([a, b, c, d, e, f]) => [a, b, c, d, e, f] },
  translate: { 1: ([x]) => translation(x, 0), 2: ([x, y]) => translation(x, y) },
  scale: { 1: ([s]) => scaling(s, s), 2: ([x, y]) => scaling(x, y) },
  rotate: {
    1: ([angle]) => rotation(radians(angle)),
    3: ([angle, x, y]) => compose(translation(x, y), rotation(radians(angle)), translation(-x, -y)),
  },
  skewx: { 1: ([angle]) => [1, 0, Math.tan(radians(angle)), 1, 0, 0] },
  skewy: { 1: ([angle]) => [1, Math.tan(radians(angle)), 0, 1, 0, 0] },
};

const CALL = /\s*,?\s*([a-z]+)\s*\(([^()]*)\)/iy;

/**
 * The map of a transform, which may flatten what it draws to a line or a point.
 *
 * @param what the element, for messages
 * @throws AnnuletError `svg-transform` for a text that is none, holds what is no number or is beyond all measure
 */
export function parseTransform(text: string, what: string, where: string): Affine {
  const fail = (message: string) =>
    new AnnuletError({
      code: "svg-transform",
      message: `the transform of ${what} ${message}`,
      path: where,
      value: text,
      allowed: "matrix, translate, scale, rotate, skewX, skewY with finite numbers",
    });
  if (text.trim() === "none") return IDENTITY;
  let map = IDENTITY;
  CALL.lastIndex = 0;
  let end = 0;
  for (let call = CALL.exec(text); call !== null; call = CALL.exec(text)) {
    end = CALL.lastIndex;
    // Style sheets write units; px and deg are what bare numbers mean.
    const words = call[2].split(/[\s,]+/).filter((word) => word !== "");
    const numbers = words.map((word) => Number(word.replace(/(?:px|deg)$/, "")));
    const make = FUNCTIONS[call[1].toLowerCase()]?.[numbers.length];
    if (make === undefined || !numbers.every(Number.isFinite)) throw fail(`cannot be read at ${call[0].trim()}`);
    map = compose(map, make(numbers));
  }
  if (text.slice(end).trim() !== "") throw fail(`cannot be read at ${text.slice(end).trim().slice(0, 40)}`);
  if (!map.every(Number.isFinite)) throw fail("is too large to draw with");
  return map;
}
