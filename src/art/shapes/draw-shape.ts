/**
 * Draws shapes in a tile: the expression worked out at the drawn level, before symmetry.
 */

import { showPath } from "../../base/errors/document-path.js";
import { nearest } from "../../base/errors/nearest.js";
import { AnnuletError, type Warn } from "../../base/errors.js";
import type { DrawingUnit } from "../../design/path-schema.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { fromGrid } from "../../flat/grid.js";
import type { Strip } from "../../flat/strip.js";
import { checkReach, type DrawnPaths } from "../read-art.js";
import type { Drawing } from "../svg/drawing.js";
import { Budget } from "./budget.js";
import { hasLattice } from "./has-lattice.js";
import { drawNode } from "./index.js";
import type { ShapeFrame } from "./shape-node.js";

/** Shapes by name, as `pattern.shapes` has them. */
export type NamedShapes = Readonly<Record<string, ShapeSpec>>;

export interface DrawerOptions {
  /** Default: none. */
  readonly named?: NamedShapes | undefined;
  /** The SVG files that shapes name, by name. Default: none. */
  readonly drawings?: ReadonlyMap<string, Drawing> | undefined;
  readonly warn: Warn;
}

/** What a shape is drawn for. */
export interface ShapePlace {
  /** Unit of coordinates, where a leaf says no other. */
  readonly unit: DrawingUnit;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** The shape's place in the document, for errors. */
  readonly where: string;
  /** Whether it may leave the tile across, beneath the rails. Default no. */
  readonly beneath?: boolean | undefined;
}

/** Draws the shapes of one pattern; each named one once for each unit and tolerance. */
export class ShapeDrawer {
  readonly strip: Strip;
  readonly drawings: ReadonlyMap<string, Drawing>;
  readonly #named: NamedShapes;
  readonly #warn: Warn;
  readonly #budget = new Budget();
  readonly #drawn = new Map<string, DrawnPaths>();

  constructor(strip: Strip, { named = {}, drawings = new Map(), warn }: DrawerOptions) {
    this.strip = strip;
    this.#named = named;
    this.drawings = drawings;
    this.#warn = warn;
  }

  /** @throws AnnuletError `shape-unknown`, `shape-cycle`, `path-outside-tile`, and what its nodes throw */
  draw(spec: ShapeSpec, { unit, tolerance, where, beneath }: ShapePlace): DrawnPaths {
    const drawn = this.#draw(spec, { unit, tolerance, where, beneath, depth: 1, generated: false, inside: [] });
    this.#budget.allowLines(drawn.open, where);
    const { grid } = this.strip;
    const paths = [...drawn.closed, ...drawn.open].map((path) => ({ points: fromGrid(grid, path) }));
    checkReach(this.strip, paths, { unit, beneath, value: spec, what: "the shape" }, where);
    return drawn;
  }

  /** Whether the tile's upper and lower edge cut off copies in the shape, so that its outlines run along them. */
  isCut(spec: ShapeSpec): boolean {
    return hasLattice(spec, this.#named);
  }

  #draw(spec: ShapeSpec, at: At): DrawnPaths {
    const { unit, tolerance, where, beneath, depth, generated } = at;
    this.#budget.enter(depth, where);
    const place = (inner: string) => (generated ? where : `${where}${inner}`);
    const deeper = (more: Partial<At>): At => ({ ...at, depth: depth + 1, ...more });
    const frame: ShapeFrame = {
      strip: this.strip,
      budget: this.#budget,
      warn: this.#warn,
      drawings: this.drawings,
      unit,
      tolerance,
      where,
      beneath: beneath === true,
      place,
      draw: (inner, step) => this.#draw(inner, deeper({ where: place(step) })),
      drawGenerated: (inner) => this.#draw(inner, deeper({ where: place(".motif"), generated: true, unit: "tile" })),
      drawNamed: (name) => this.#drawNamed(name, deeper({ where: place(".shape") })),
    };
    return drawNode(spec, frame);
  }

  #drawNamed(name: string, at: At): DrawnPaths {
    const { unit, tolerance, where, beneath, inside } = at;
    if (!Object.hasOwn(this.#named, name)) throw unknownShape(name, Object.keys(this.#named), where);
    if (inside.includes(name)) throw cycle([...inside.slice(inside.indexOf(name)), name], where);
    const key = `${unit} ${tolerance} ${beneath} ${name}`;
    const known = this.#drawn.get(key);
    if (known !== undefined) return known;
    const drawn = this.#draw(this.#named[name], {
      ...at,
      where: showPath(["pattern", "shapes", name]) as string,
      inside: [...inside, name],
    });
    this.#drawn.set(key, drawn);
    return drawn;
  }
}

/** Where the drawing has come to. */
interface At extends ShapePlace {
  readonly depth: number;
  /** Whether a motif made this part, which therefore has no place of its own in the document. */
  readonly generated: boolean;
  /** The named shapes that this part belongs to, outermost first. */
  readonly inside: readonly string[];
}

function unknownShape(name: string, known: readonly string[], where: string): AnnuletError {
  return new AnnuletError({
    code: "shape-unknown",
    message: `there is no shape of the name ${JSON.stringify(name)}`,
    path: where,
    value: name,
    allowed: known.length > 0 ? known.slice(0, SHOWN_NAMES).join(", ") : "none: pattern.shapes is empty",
    hint: nearest(name, known) ?? 'name it in "pattern": {"shapes": {…}}',
  });
}

/** Most names that a message lists. */
const SHOWN_NAMES = 20;

function cycle(names: readonly string[], where: string): AnnuletError {
  return new AnnuletError({
    code: "shape-cycle",
    message: `the shape is made of itself: ${names.join(" → ")}`,
    path: where,
    value: names[0],
    allowed: "shapes that do not lead back to themselves",
  });
}
