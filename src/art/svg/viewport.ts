/**
 * viewBox and preserveAspectRatio: how an element's own coordinates fill its viewport.
 * SVG 1.1 (Second Edition), 7.7 and 7.8.
 */
import type { Element } from "@xmldom/xmldom";
import { AnnuletError } from "../../base/errors.js";
import { type Affine, compose, IDENTITY, scaling, translation } from "../../base/math/affine.js";
import { attribute, describeElement } from "./element.js";

/** A box: left, top, width, height; px. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The element's viewBox, where it has one.
 *
 * @throws AnnuletError `svg-viewbox` where it is not four numbers with a size above 0
 */
export function viewBoxOf(element: Element, where: string): Box | undefined {
  const text = attribute(element, "viewBox")?.trim();
  if (text === undefined || text === "") return undefined;
  const numbers = text.split(/[\s,]+/).map(Number);
  const [x, y, width, height] = numbers;
  if (numbers.length === 4 && numbers.every(Number.isFinite) && width > 0 && height > 0) {
    return { x, y, width, height };
  }
  throw new AnnuletError({
    code: "svg-viewbox",
    message: `the viewBox of ${describeElement(element)} is no box`,
    path: where,
    value: text,
    allowed: "four finite numbers: left, top, width and height, the last two above 0",
  });
}

/** Shares of the room left over that lie before the drawing, by the word of preserveAspectRatio. */
const ALIGN: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };

/** The map from the viewBox to the viewport. */
export function fillViewport(viewBox: Box | undefined, viewport: Box, aspectRatio: string | undefined): Affine {
  const { x, y, width, height } = viewport;
  if (viewBox === undefined) return x === 0 && y === 0 ? IDENTITY : translation(x, y);
  const [sx, sy] = [width / viewBox.width, height / viewBox.height];
  const back = translation(-viewBox.x, -viewBox.y);
  const words = (aspectRatio ?? "").trim().replace(/^defer\s+/, "");
  if (words.startsWith("none")) return compose(translation(x, y), scaling(sx, sy), back);
  const match = /^x(Min|Mid|Max)Y(Min|Mid|Max)/.exec(words);
  const scale = /\bslice$/.test(words) ? Math.max(sx, sy) : Math.min(sx, sy);
  const before = (room: number, word: string | undefined) => room * ALIGN[word ?? "Mid"];
  return compose(
    translation(
      x + before(width - viewBox.width * scale, match?.[1]),
      y + before(height - viewBox.height * scale, match?.[2]),
    ),
    scaling(scale, scale),
    back,
  );
}
