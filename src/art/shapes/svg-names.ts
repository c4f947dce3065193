/**
 * Which SVG files a shape is made of.
 */
import type { TakeSpec } from "../../design/art/svg-take.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";

/** A file's name, and where it stands in the document. */
export interface SvgName {
  readonly name: string;
  readonly where: string;
  /** What of it counts; default all. */
  readonly take?: TakeSpec | undefined;
}

/** The files of a shape and of all that is inside it; those of shapes that it names are not among them. */
export function svgNames(shape: ShapeSpec, where: string): SvgName[] {
  if ("svg" in shape && shape.svg !== undefined) return [{ name: shape.svg, take: shape.take, where: `${where}.svg` }];
  if ("of" in shape && shape.of !== undefined) return svgNames(shape.of, `${where}.of`);
  return LISTS.flatMap((list) => {
    const parts = (shape as { readonly [key in (typeof LISTS)[number]]?: readonly ShapeSpec[] })[list] ?? [];
    return parts.flatMap((part, i) => svgNames(part, `${where}.${list}[${i}]`));
  });
}

/** The fields that hold shapes in a list. */
const LISTS = ["union", "intersection", "difference"] as const;
