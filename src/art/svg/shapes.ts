/**
 * The basic shapes as exact curves. SVG 1.1 (Second Edition), 9; automatic radii of rect as there in 9.2. Sizes and places
 * come from the style, since they may stand there too (SVG 2, 7); of lines and polygons from attributes alone.
 */
import type { Element } from "@xmldom/xmldom";
import { AnnuletError } from "../../base/errors.js";
import type { Segment } from "../../base/math/curve.js";
import { circleOrEllipse } from "../../base/math/elliptic-arc.js";
import { type PathSegment, readPathData, type Subpath } from "../../base/math/path-data.js";
import type { Point2 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import { attribute, describeElement, svgName } from "./element.js";
import type { Style } from "./element-style.js";
import { parseLength, requireLength } from "./length.js";

/** Size of the viewport, px, which percentages are of. */
export interface Viewport {
  readonly width: number;
  readonly height: number;
}

/** Names of the elements that draw. */
export const SHAPES: ReadonlySet<string> = new Set([
  "path",
  "rect",
  "circle",
  "ellipse",
  "line",
  "polyline",
  "polygon",
]);

/**
 * The curves of a shape, in its own coordinates; none for a shape without size.
 *
 * @throws AnnuletError `svg-length`, `svg-points`, and as `readPathData`, each naming the element
 */
export function shapeOf(element: Element, style: Style, viewport: Viewport, where: string): Subpath[] {
  const measure = reader(element, style, viewport, where);
  switch (svgName(element)) {
    case "path":
      return pathOf(pathText(style), element, where);
    case "rect":
      return rectOf(measure);
    case "circle": {
      const radius = measure("r", "diagonal") ?? 0;
      return ellipseOf([measure("cx", "width") ?? 0, measure("cy", "height") ?? 0], [radius, radius]);
    }
    case "ellipse": {
      const [rx, ry] = [measure("rx", "width"), measure("ry", "height")];
      return ellipseOf([measure("cx", "width") ?? 0, measure("cy", "height") ?? 0], [rx ?? ry ?? 0, ry ?? rx ?? 0]);
    }
    case "line": {
      const from: Point2 = [measure("x1", "width") ?? 0, measure("y1", "height") ?? 0];
      const to: Point2 = [measure("x2", "width") ?? 0, measure("y2", "height") ?? 0];
      return [{ start: from, segments: [{ kind: "line", from, to }], closed: false }];
    }
    case "polyline":
    case "polygon":
      return polygonOf(element, where);
    default:
      return [];
  }
}

type Measure = (name: string, of: "width" | "height" | "diagonal") => number | undefined;

function reader(element: Element, style: Style, { width, height }: Viewport, where: string): Measure {
  // What a percentage of neither axis is of: SVG 1.1, 7.10.
  const wholes = { width, height, diagonal: Math.hypot(width, height) / Math.SQRT2 };
  return (name, of) => {
    const text = isSize(name) ? style[name] : attribute(element, name);
    if (text === undefined || text.trim() === "" || text.trim() === "auto") return undefined;
    return requireLength(text, wholes[of], `${name} of ${describeElement(element)}`, where, style.fonts);
  };
}

const SIZES = ["x", "y", "width", "height", "cx", "cy", "r", "rx", "ry"] as const;

function isSize(name: string): name is (typeof SIZES)[number] {
  return (SIZES as readonly string[]).includes(name);
}

/** The path data of a style: an attribute has it plain, a style as `path("M …")`. */
function pathText({ d }: Style): string {
  return (
    /^path\(\s*(?:"([^"]*)"|'([^']*)')\s*\)$/
      .exec(d)
      ?.slice(1)
      .find((text) => text !== undefined) ?? d
  );
}

function pathOf(d: string, element: Element, where: string): Subpath[] {
  if (d.trim() === "" || d.trim() === "none") return [];
  try {
    return readPathData(d, where, { dots: true });
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    throw new AnnuletError(
      error.problems.map((problem) => ({ ...problem, message: `${describeElement(element)}: ${problem.message}` })),
      { cause: error },
    );
  }
}

function rectOf(measure: Measure): Subpath[] {
  const [x, y] = [measure("x", "width") ?? 0, measure("y", "height") ?? 0];
  const [width, height] = [measure("width", "width") ?? 0, measure("height", "height") ?? 0];
  if (width <= 0 || height <= 0) return [];
  const [givenX, givenY] = [measure("rx", "width"), measure("ry", "height")];
  const rx = Math.min(Math.max(givenX ?? givenY ?? 0, 0), width / 2);
  const ry = Math.min(Math.max(givenY ?? givenX ?? 0, 0), height / 2);
  const [right, bottom] = [x + width, y + height];
  if (rx === 0 || ry === 0)
    return [
      closedPolygon([
        [x, y],
        [right, y],
        [right, bottom],
        [x, bottom],
      ]),
    ];
  const corner = (centre: Point2, start: number): PathSegment =>
    circleOrEllipse({ kind: "ellipse", centre, radii: [rx, ry], turn: 0, start, sweep: TURN / 4 });
  const side = (from: Point2, to: Point2): PathSegment[] =>
    from[0] === to[0] && from[1] === to[1] ? [] : [{ kind: "line", from, to }];
  const segments = [
    ...side([x + rx, y], [right - rx, y]),
    corner([right - rx, y + ry], -TURN / 4),
    ...side([right, y + ry], [right, bottom - ry]),
    corner([right - rx, bottom - ry], 0),
    ...side([right - rx, bottom], [x + rx, bottom]),
    corner([x + rx, bottom - ry], TURN / 4),
    ...side([x, bottom - ry], [x, y + ry]),
    corner([x + rx, y + ry], TURN / 2),
  ];
  return [{ start: [x + rx, y], segments, closed: true }];
}

function ellipseOf(centre: Point2, radii: Point2): Subpath[] {
  if (!(radii[0] > 0 && radii[1] > 0)) return [];
  // Two halves, so that no piece begins where it ends.
  const half = (start: number): PathSegment =>
    circleOrEllipse({ kind: "ellipse", centre, radii, turn: 0, start, sweep: TURN / 2 });
  return [{ start: [centre[0] + radii[0], centre[1]], segments: [half(0), half(TURN / 2)], closed: true }];
}

function polygonOf(element: Element, where: string): Subpath[] {
  const text = (attribute(element, "points") ?? "").trim();
  if (text === "") return [];
  const words = text.match(/[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?|[^\s,]/gi) ?? [];
  const numbers = words.map((word) => parseLength(word, 0));
  if (numbers.some((number) => number === undefined) || numbers.length % 2 === 1) {
    throw new AnnuletError({
      code: "svg-points",
      message: `the points of ${describeElement(element)} are not pairs of numbers`,
      path: where,
      value: text,
      allowed: "x and y of each point, finite",
    });
  }
  const points: Point2[] = [];
  for (let i = 0; i < numbers.length; i += 2) points.push([numbers[i] as number, numbers[i + 1] as number]);
  if (points.length < 2) return [];
  return [svgName(element) === "polygon" ? closedPolygon(points) : { ...closedPolygon(points, false), closed: false }];
}

function closedPolygon(points: readonly Point2[], closing = true): Subpath {
  const segments: Segment[] = [];
  const ends = closing ? [...points.slice(1), points[0]] : points.slice(1);
  for (const [i, to] of ends.entries()) {
    const from = points[i];
    if (from[0] !== to[0] || from[1] !== to[1]) segments.push({ kind: "line", from, to });
  }
  return { start: points[0], segments, closed: closing };
}
