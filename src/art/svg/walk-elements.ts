/**
 * Walks the elements of a file and collects what they draw: groups, transforms, `use`, symbols, nested viewports, styles
 * and clip paths. What is no geometry is told, by name and line.
 */
import type { Element } from "@xmldom/xmldom";
import { AnnuletError, type Warn } from "../../base/errors.js";
import { type Affine, compose, IDENTITY, scaling, translation } from "../../base/math/affine.js";
import { colourKey } from "./colour.js";
import type { Clip, Dashes, DrawnShape, FillRule, Stroke } from "./drawing.js";
import { attribute, childElements, describeElement, partsOf, reference, svgName } from "./element.js";
import { INITIAL_STYLE, type Style, styleOf } from "./element-style.js";
import { isFlat } from "./is-flat.js";
import { requireLength } from "./length.js";
import { isClear, isOpaque, type Paint, paintOf, targetId, urlTarget } from "./paint.js";
import type { ParsedSvg } from "./parse.js";
import { parseTransform } from "./parse-transform.js";
import { SHAPES, shapeOf, type Viewport } from "./shapes.js";
import type { StyleSheet } from "./stylesheet.js";
import { SVG_LIMITS, tooMuch } from "./svg-limits.js";
import type { Take } from "./take.js";
import { type Box, fillViewport, viewBoxOf } from "./viewport.js";

/** Elements that only hold what others use, or say something about the drawing. */
const SILENT: ReadonlySet<string> = new Set([
  ...["defs", "symbol", "clipPath", "style", "title", "desc", "metadata", "view", "cursor"],
  // Named where something uses them.
  ...["linearGradient", "radialGradient", "pattern", "mask", "filter", "marker"],
]);

const GROUPS: ReadonlySet<string> = new Set(["g", "a"]);

/** Where in the drawing the walk stands. */
export interface Surroundings {
  readonly style: Style;
  readonly map: Affine;
  readonly viewport: Viewport;
  readonly clips: readonly Clip[];
  /** How many elements and uses lie around. */
  readonly depth: number;
  /** Elements being used or clipped by, the outermost first. */
  readonly within: readonly Element[];
  /** The ids and layers that lie around, as `Take` has them. */
  readonly parts: ReadonlySet<string>;
  /** A clip path's shapes count filled by clip-rule, whatever their paint. */
  readonly clipping: boolean;
  /** The mask whose shapes are drawn. */
  readonly masking: Masking | undefined;
}

/** A mask that is being drawn. */
interface Masking {
  /** Whether all that is painted shows, whatever its colour. */
  readonly alpha: boolean;
  /** Whether all of it so far is opaque, and white or black. */
  plain: boolean;
}

/** Sizes and places of viewports. */
type SizeName = "x" | "y" | "width" | "height";

/** What a walk goes by. */
export interface WalkOptions {
  readonly sheet: StyleSheet;
  readonly take: Take;
  readonly warn: Warn;
  /** The file's place in the document, for errors. */
  readonly where: string;
}

export class Walk {
  readonly #file: ParsedSvg;
  readonly #sheet: StyleSheet;
  readonly #warn: Warn;
  readonly #where: string;
  readonly #take: Take;
  /** Colours painted with, by `colourKey`, as they are first written. */
  readonly colours = new Map<string, string>();
  #drawn = 0;
  #pathText = 0;
  #segments = 0;

  constructor(file: ParsedSvg, { sheet, take, warn, where }: WalkOptions) {
    this.#file = file;
    this.#sheet = sheet;
    this.#take = take;
    this.#warn = warn;
    this.#where = where;
  }

  /** What the children of an element draw. */
  children(element: Element, around: Surroundings): DrawnShape[] {
    return childElements(element).flatMap((child) => this.#draw(child, around));
  }

  /** The element's own surroundings: style, transform and clips. Undefined where it shows nothing. */
  enter(element: Element, around: Surroundings): Surroundings | undefined {
    const style = styleOf(element, around.style, this.#sheet);
    if (style.display === "none" || isClear(style.opacity)) return undefined;
    const map =
      style.transform === ""
        ? around.map
        : compose(around.map, parseTransform(style.transform, describeElement(element), this.#where));
    if (map.every(Number.isFinite) && isFlat(map)) {
      this.#flattened(element);
      return undefined;
    }
    if (style["transform-origin"] !== "" && style.transform !== "") this.#ignored(element, "transform-origin");
    if (style.filter !== "none") this.#ignored(element, "filter");
    if (around.masking !== undefined && (style.filter !== "none" || !isOpaque("", style.opacity))) {
      around.masking.plain = false;
    }
    const inner = { ...around, style, map, depth: around.depth + 1, parts: this.#partsOf(element, around) };
    const clip = this.#clipOf(element, inner);
    return clip === undefined ? inner : { ...inner, clips: [...inner.clips, clip] };
  }

  /** The rectangle of a viewport as a clip, or none where the element lets its content show outside. */
  edge(element: Element, style: Style, viewport: Box, map: Affine): Clip[] {
    if (style.overflow === "visible" || style.overflow === "auto") return [];
    return [boxClip(viewport, map, `the edge of ${describeElement(element)}`)];
  }

  #draw(element: Element, around: Surroundings): DrawnShape[] {
    const name = svgName(element);
    if (name === undefined || SILENT.has(name)) return [];
    if (++this.#drawn > SVG_LIMITS.drawn) {
      throw tooMuch(
        `draws more than ${SVG_LIMITS.drawn} elements, counting what use repeats`,
        `at most ${SVG_LIMITS.drawn}`,
        this.#where,
      );
    }
    if (around.depth > SVG_LIMITS.depth) {
      throw tooMuch(
        `nests elements deeper than ${SVG_LIMITS.depth}, counting what use repeats`,
        `at most ${SVG_LIMITS.depth}`,
        this.#where,
      );
    }
    if (!isDrawn(name)) {
      if (around.masking !== undefined) {
        around.masking.plain = false;
        return [];
      }
      const hidden = styleOf(element, around.style, this.#sheet).display === "none";
      if (!hidden && this.#take.takes(undefined, this.#partsOf(element, around))) this.#notGeometry(element);
      return [];
    }
    if (around.clipping && (name === "svg" || name === "switch" || GROUPS.has(name))) return [];
    const inner = this.enter(element, around);
    if (inner === undefined) return [];
    return this.masked(element, inner, this.#content(element, name, inner));
  }

  #content(element: Element, name: string, inner: Surroundings): DrawnShape[] {
    if (SHAPES.has(name)) return this.#shape(element, inner);
    if (name === "use") return this.#use(element, inner);
    if (name === "svg") return this.#nested(element, inner, {});
    if (name === "switch") return choose(element).flatMap((child) => this.#draw(child, inner));
    return this.children(element, inner);
  }

  /** What a mask leaves of the element's shapes; all of them where it is none that is followed, which is told. */
  masked(element: Element, around: Surroundings, shapes: DrawnShape[]): DrawnShape[] {
    if (around.style.mask === "none") return shapes;
    const clip = around.clipping ? undefined : this.#maskOf(element, around, shapes);
    if (clip !== undefined) return shapes.map((shape) => ({ ...shape, clips: [...shape.clips, clip] }));
    this.#ignored(element, "mask");
    if (around.masking !== undefined) around.masking.plain = false;
    return shapes;
  }

  /** A mask as a clip; undefined where more than opaque white and black would have to be followed. */
  #maskOf(element: Element, around: Surroundings, shapes: readonly DrawnShape[]): Clip | undefined {
    const id = urlTarget(around.style.mask);
    const target = id === undefined ? undefined : this.#file.byId.get(id);
    if (target === undefined || svgName(target) !== "mask") return undefined;
    this.#refuseCycle(element, target, around);
    if (attribute(target, "maskContentUnits") === "objectBoundingBox") return undefined;
    const inUser = attribute(target, "maskUnits") === "userSpaceOnUse";
    // The box round fills, and a tenth more, cuts off nothing but strokes.
    if (!inUser && (hasBox(target) || shapes.some(({ stroke }) => stroke !== undefined))) return undefined;
    const style = styleOf(target, this.#styleAround(target), this.#sheet);
    if (style.mask !== "none" || style["clip-path"] !== "none" || style.filter !== "none") return undefined;
    const masking: Masking = { alpha: style["mask-type"] === "alpha", plain: true };
    const within = [...around.within, target];
    const drawn = this.children(target, { ...around, style, clips: [], depth: around.depth + 1, within, masking });
    if (!masking.plain || changesOf(drawn) > SVG_LIMITS.maskChanges) return undefined;
    const clips = inUser ? [boxClip(this.#maskBox(target, style, around.viewport), around.map, "a mask's box")] : [];
    return { shapes: drawn, clips };
  }

  /** The box outside of which a mask hides all. SVG 1.1, 14.4: a tenth round the viewport where nothing is said. */
  #maskBox(mask: Element, style: Style, { width, height }: Viewport): Box {
    const read = (name: SizeName, whole: number, normally: number) =>
      this.#size(mask, style, name, whole) ?? normally * whole;
    return {
      x: read("x", width, -0.1),
      y: read("y", height, -0.1),
      width: Math.max(0, read("width", width, 1.2)),
      height: Math.max(0, read("height", height, 1.2)),
    };
  }

  /** The style that an element inherits where it stands in the file. */
  #styleAround(element: Element): Style {
    const ancestors: Element[] = [];
    for (let at = element.parentNode; at !== null && at.nodeType === at.ELEMENT_NODE; at = at.parentNode) {
      ancestors.unshift(at as Element);
    }
    return ancestors.reduce((style, ancestor) => styleOf(ancestor, style, this.#sheet), INITIAL_STYLE);
  }

  /** A shape of a mask: white shows what is beneath the mask, black hides it. */
  #maskShapes(shape: Omit<DrawnShape, "fill" | "stroke">, element: Element, around: Surroundings): DrawnShape[] {
    const { style, viewport, masking } = around;
    if (masking === undefined) return [];
    const shows = (text: string, opacity: string): boolean | undefined => {
      const paint = paintOf(text, opacity, style.color);
      if (paint.kind === "none") return undefined;
      const tone = paint.kind === "colour" && isOpaque(paint.colour, opacity) ? colourKey(paint.colour) : "";
      if (tone !== "" && (masking.alpha || tone === "#ffffff")) return true;
      if (tone !== "#000000") masking.plain = false;
      return false;
    };
    const markers = ["marker-start", "marker-mid", "marker-end"] as const;
    if (markers.some((marker) => style[marker] !== "none")) masking.plain = false;
    const parts: DrawnShape[] = [];
    const fill = svgName(element) === "line" ? undefined : shows(style.fill, style["fill-opacity"]);
    if (fill !== undefined) parts.push({ ...shape, fill: ruleOf(style["fill-rule"]), stroke: undefined, hides: !fill });
    const line = shows(style.stroke, style["stroke-opacity"]);
    const stroke = line === undefined ? undefined : this.#stroke(element, style, viewport);
    if (stroke !== undefined) parts.push({ ...shape, fill: undefined, stroke, hides: line === false });
    return parts;
  }

  /** The ids and layers around the element's content, its own among them. */
  #partsOf(element: Element, { parts, clipping, masking }: Surroundings): ReadonlySet<string> {
    const own = clipping || masking !== undefined ? [] : partsOf(element);
    for (const part of own) this.#take.see(part);
    return own.length === 0 ? parts : new Set([...parts, ...own]);
  }

  #shape(element: Element, around: Surroundings): DrawnShape[] {
    const { style, map, clips, viewport, parts, clipping } = around;
    for (const child of childElements(element)) {
      const name = svgName(child);
      if (name !== undefined && !SILENT.has(name)) this.#notGeometry(child);
    }
    if (style.visibility !== "visible") return [];
    this.#pathText += (svgName(element) === "path" ? style.d : (attribute(element, "points") ?? "")).length;
    if (this.#pathText > SVG_LIMITS.pathText) {
      throw tooMuch(
        `draws more than ${SVG_LIMITS.pathText} characters of path data, counting what use repeats`,
        `at most ${SVG_LIMITS.pathText}`,
        this.#where,
      );
    }
    const subpaths = shapeOf(element, style, viewport, this.#where);
    for (const { segments } of subpaths) this.#segments += segments.length;
    if (this.#segments > SVG_LIMITS.segments) {
      throw tooMuch(
        `draws more than ${SVG_LIMITS.segments} lines and curves, counting what use repeats`,
        `at most ${SVG_LIMITS.segments}`,
        this.#where,
      );
    }
    if (subpaths.length === 0) return [];
    const shape = { subpaths, map, clips, what: describeElement(element) };
    if (around.masking !== undefined && !clipping) return this.#maskShapes(shape, element, around);
    if (clipping) return [{ ...shape, fill: ruleOf(style["clip-rule"]), stroke: undefined }];
    const paints = (text: string, opacity: string) => this.#paints(element, paintOf(text, opacity, style.color), parts);
    const filled = svgName(element) !== "line" && paints(style.fill, style["fill-opacity"]);
    const fill = filled ? ruleOf(style["fill-rule"]) : undefined;
    const stroke = paints(style.stroke, style["stroke-opacity"]) ? this.#stroke(element, style, viewport) : undefined;
    for (const marker of ["marker-start", "marker-mid", "marker-end"] as const) {
      if (style[marker] !== "none") this.#ignored(element, marker);
    }
    return fill === undefined && stroke === undefined ? [] : [{ ...shape, fill, stroke }];
  }

  #paints(element: Element, paint: Paint, parts: ReadonlySet<string>): boolean {
    if (paint.kind === "none") return false;
    if (paint.kind === "colour") {
      const key = colourKey(paint.colour);
      this.#take.see(key);
      if (!this.#take.takes(key, parts)) return false;
      if (!this.colours.has(key)) this.colours.set(key, paint.colour);
      return true;
    }
    if (!this.#take.takes(undefined, parts)) return false;
    const server = this.#file.byId.get(paint.id);
    if (server !== undefined) {
      this.#warn({
        code: "svg-not-geometry",
        message: `${describeElement(element)} is painted with ${describeElement(server)}, which is no geometry: the shape counts as filled all over`,
        path: this.#where,
        hint: "give it a plain colour, or none where it should not be raised",
      });
      return true;
    }
    const fallback = paint.fallback ?? "none";
    this.#ignored(element, `paint url(#${paint.id}), which is not in the file`);
    return paintOf(fallback, "1", "black").kind === "colour";
  }

  #stroke(element: Element, style: Style, { width, height }: Viewport): Stroke | undefined {
    const diagonal = Math.hypot(width, height) / Math.SQRT2;
    const what = `stroke-width of ${describeElement(element)}`;
    const stroke = requireLength(style["stroke-width"], diagonal, what, this.#where, style.fonts);
    if (stroke <= 0) return undefined;
    if (style["vector-effect"] === "non-scaling-stroke") this.#ignored(element, "vector-effect");
    const [cap, join] = [style["stroke-linecap"], style["stroke-linejoin"]];
    return {
      width: stroke,
      cap: cap === "round" || cap === "square" ? cap : "butt",
      join: join === "round" || join === "bevel" ? join : "miter",
      miterLimit: Math.max(1, Number.parseFloat(style["stroke-miterlimit"]) || 4),
      dashes: this.#dashes(element, style, diagonal),
    };
  }

  #dashes(element: Element, style: Style, diagonal: number): Dashes | undefined {
    const text = style["stroke-dasharray"];
    if (text === "none") return undefined;
    const read = (length: string, name: string) =>
      requireLength(length, diagonal, `${name} of ${describeElement(element)}`, this.#where, style.fonts);
    const words = text.split(/[\s,]+/).filter((word) => word !== "");
    if (words.length > SVG_LIMITS.dashes) {
      throw tooMuch(
        `has a stroke of more than ${SVG_LIMITS.dashes} dashes`,
        `at most ${SVG_LIMITS.dashes}`,
        this.#where,
      );
    }
    const once = words.map((word) => read(word, "stroke-dasharray"));
    // One that is below 0, and dashes of no length at all, leave the stroke solid.
    if (once.some((length) => length < 0) || !once.some((length) => length > 0)) return undefined;
    const lengths = once.length % 2 === 0 ? once : [...once, ...once];
    const told = Number(attribute(element, "pathLength") ?? Number.NaN);
    const pathLength = told > 0 && Number.isFinite(told) ? told : undefined;
    return { lengths, offset: read(style["stroke-dashoffset"], "stroke-dashoffset"), pathLength };
  }

  #use(element: Element, around: Surroundings): DrawnShape[] {
    const link = reference(element) ?? "";
    const target = this.#target(element, link);
    if (target === undefined) return [];
    this.#refuseCycle(element, target, around);
    const { width, height } = around.viewport;
    const read = (name: SizeName, whole: number) => this.#size(element, around.style, name, whole);
    const [x, y] = [read("x", width) ?? 0, read("y", height) ?? 0];
    const inner: Surroundings = {
      ...around,
      map: compose(around.map, translation(x, y)),
      within: [...around.within, target],
    };
    const name = svgName(target);
    if (name !== "symbol" && name !== "svg") return this.#draw(target, inner);
    if (around.clipping) return [];
    const entered = this.enter(target, inner);
    return entered === undefined
      ? []
      : this.masked(
          target,
          entered,
          this.#nested(target, entered, { width: read("width", width), height: read("height", height) }),
        );
  }

  /** A size or place of a viewport; undefined where it is not given or automatic. */
  #size(element: Element, style: Style, name: SizeName, whole: number): number | undefined {
    const text = style[name];
    if (text === "" || text === "auto") return undefined;
    return requireLength(text, whole, `${name} of ${describeElement(element)}`, this.#where, style.fonts);
  }

  /** A nested svg or symbol: a viewport of its own. */
  #nested(
    element: Element,
    around: Surroundings,
    given: { readonly width?: number; readonly height?: number },
  ): DrawnShape[] {
    const outer = around.viewport;
    const read = (name: SizeName, whole: number, normally: number) =>
      this.#size(element, around.style, name, whole) ?? normally;
    const viewport: Box = {
      x: read("x", outer.width, 0),
      y: read("y", outer.height, 0),
      width: given.width ?? read("width", outer.width, outer.width),
      height: given.height ?? read("height", outer.height, outer.height),
    };
    if (!(viewport.width > 0 && viewport.height > 0)) return [];
    const viewBox = viewBoxOf(element, this.#where);
    return this.children(element, {
      ...around,
      map: compose(around.map, fillViewport(viewBox, viewport, attribute(element, "preserveAspectRatio"))),
      viewport: viewBox ?? viewport,
      clips: [...around.clips, ...this.edge(element, around.style, viewport, around.map)],
    });
  }

  #clipOf(element: Element, around: Surroundings): Clip | undefined {
    const text = around.style["clip-path"];
    if (text === "none") return undefined;
    const id = urlTarget(text);
    const target = id === undefined ? undefined : this.#file.byId.get(id);
    if (target === undefined || svgName(target) !== "clipPath") {
      this.#ignored(element, `clip-path ${text}`);
      return undefined;
    }
    this.#refuseCycle(element, target, around);
    if (attribute(target, "clipPathUnits") === "objectBoundingBox") {
      this.#ignored(element, "clip path in clipPathUnits objectBoundingBox");
      return undefined;
    }
    const own: Surroundings = { ...around, clips: [], within: [...around.within, target], clipping: true };
    const inner = this.enter(target, own);
    if (inner === undefined) return { shapes: [], clips: [] };
    return { shapes: this.children(target, { ...inner, clips: [] }), clips: inner.clips };
  }

  #target(element: Element, link: string): Element | undefined {
    const id = targetId(link);
    const target = id === undefined ? undefined : this.#file.byId.get(id);
    if (target !== undefined) return target;
    this.#warn({
      code: "svg-not-drawn",
      message:
        id === undefined
          ? `${describeElement(element)} points outside the file, which is never fetched: it is left out`
          : `${describeElement(element)} points to #${id.slice(0, 40)}, which is not in the file: it is left out`,
      path: this.#where,
      value: link,
    });
    return undefined;
  }

  #refuseCycle(element: Element, target: Element, { within }: Surroundings): void {
    const inside = within.includes(target) || holds(target, element);
    if (!inside) return;
    throw new AnnuletError({
      code: "svg-cycle",
      message: `${describeElement(element)} points to ${describeElement(target)}, which contains it: the drawing would never end`,
      path: this.#where,
      allowed: "references that do not lead back to themselves",
    });
  }

  #notGeometry(element: Element): void {
    this.#warn({
      code: "svg-not-geometry",
      message: `${describeElement(element)} is no geometry: it is left out`,
      path: this.#where,
      hint: HINTS[svgName(element) ?? ""] ?? "take it out of the drawing, or draw it as paths",
    });
  }

  #flattened(element: Element): void {
    this.#warn({
      code: "svg-not-drawn",
      message: `the transform of ${describeElement(element)} flattens it to nothing: it is left out`,
      path: this.#where,
      allowed: "transforms that keep a shape's width and height",
    });
  }

  #ignored(element: Element, what: string): void {
    this.#warn({
      code: "svg-not-geometry",
      message: `${what} of ${describeElement(element)} is not followed: the shape is taken without it`,
      path: this.#where,
      hint: "apply it in your drawing program, so that only shapes are left",
    });
  }
}

/** Whether elements of that name draw something, or hold what does. */
function isDrawn(name: string): boolean {
  return GROUPS.has(name) || SHAPES.has(name) || ["svg", "use", "switch"].includes(name);
}

/**
 * Which child of a switch is drawn: the first that can be (SVG 1.1, 5.8), one for every language before one for some, as
 * nobody's language is known here. Where none can, the first, so that it is told.
 */
function choose(element: Element): Element[] {
  const children = childElements(element).filter((child) => {
    const name = svgName(child);
    return name !== undefined && !SILENT.has(name);
  });
  const able = children.filter(
    (child) => isDrawn(svgName(child) ?? "") && (attribute(child, "requiredExtensions") ?? "").trim() === "",
  );
  const chosen = able.find((child) => attribute(child, "systemLanguage") === undefined) ?? able[0] ?? children[0];
  return chosen === undefined ? [] : [chosen];
}

const HINTS: Readonly<Record<string, string>> = {
  text: "turn the text into outlines in your drawing program",
  image: "trace the picture into paths in your drawing program",
};

/** A rectangle as a clip. */
function boxClip({ x, y, width, height }: Box, map: Affine, what: string): Clip {
  const corners = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  const segments = corners.map((from, i) => ({ kind: "line" as const, from, to: corners[(i + 1) % 4] }));
  return {
    shapes: [
      {
        subpaths: [{ start: [0, 0], segments, closed: true }],
        map: compose(map, translation(x, y), scaling(width, height)),
        fill: "nonzero",
        stroke: undefined,
        clips: [],
        what,
      },
    ],
    clips: [],
  };
}

/** The surroundings at the top of a file. */
export function outermost(style: Style, viewport: Viewport): Surroundings {
  return {
    style,
    map: IDENTITY,
    viewport,
    clips: [],
    depth: 0,
    within: [],
    parts: new Set(),
    clipping: false,
    masking: undefined,
  };
}

function ruleOf(text: string): FillRule {
  return text === "evenodd" ? "evenodd" : "nonzero";
}

/** How often a mask changes between shapes that show and shapes that hide. */
function changesOf(shapes: readonly DrawnShape[]): number {
  return shapes.filter(({ hides }, i) => i > 0 && hides !== shapes[i - 1].hides).length;
}

/** Whether a mask names a box of its own. */
function hasBox(mask: Element): boolean {
  return ["x", "y", "width", "height"].some((name) => attribute(mask, name) !== undefined);
}

/** Whether an element is or contains another. */
function holds(outer: Element, inner: Element): boolean {
  for (let at: Element["parentNode"] = inner; at !== null; at = at.parentNode) if (at === outer) return true;
  return false;
}
