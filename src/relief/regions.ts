/**
 * The regions of a pattern, completed; those that are composed with others after these.
 */

import type { ShapeDrawer } from "../art/shapes/draw-shape.js";
import { nearest } from "../base/errors/nearest.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import { FORGET, type Remember, rememberPausing } from "../base/memory.js";
import { finish, type Pausing } from "../base/pausing.js";
import { Work } from "../base/work.js";
import type { RegionsOf } from "../design/areas.js";
import { hasHeights } from "../design/art/height-rules.js";
import type { RegionSpec } from "../design/pattern/region.js";
import { type Art, type ArtSpec, completingArt } from "./art.js";
import { isComposed, othersOf } from "./compose-region.js";

export interface RegionsOptions {
  readonly remember?: Remember;
  readonly work?: Work;
}

/** Completes each region once, when it is first asked for. */
export class Regions {
  readonly #specs: readonly RegionSpec[];
  readonly #where: string;
  readonly #drawer: ShapeDrawer;
  readonly #warn: Warn;
  #said = 0;
  readonly #remember: Remember;
  readonly #work: Work;
  readonly #arts = new Map<number, Art>();
  /** The regions that are being completed, outermost first. */
  readonly #open: number[] = [];

  /**
   * @param remember of arts on the drawer's strip; default works all out
   * @param work counts corners; default within the default limits
   */
  constructor({ regions, where }: RegionsOf, drawer: ShapeDrawer, warn: Warn, how: RegionsOptions = {}) {
    this.#specs = regions;
    this.#where = where;
    this.#drawer = drawer;
    this.#warn = (warning) => {
      this.#said++;
      warn(warning);
    };
    this.#remember = how.remember ?? FORGET;
    this.#work = how.work ?? new Work();
  }

  /** @throws AnnuletError as `completeArt`; `region-unknown`, `region-ambiguous`, `region-cycle` */
  art(index: number): Art {
    return finish(this.making(index));
  }

  /** The same in pieces. */
  *making(index: number): Pausing<Art> {
    const known = this.#arts.get(index);
    if (known !== undefined) return known;
    this.#open.push(index);
    const where = `${this.#where}.regions[${index}]`;
    const art = yield* this.#complete(this.#specs[index], where);
    this.#open.pop();
    this.#arts.set(index, art);
    return art;
  }

  *#complete(spec: RegionSpec, where: string): Pausing<Art> {
    const other = (name: string, place: string) => {
      const found = this.#find(name, place);
      if (this.#open.includes(found)) throw this.#cycle(found, place);
      if (hasHeights(this.#specs[found])) throw noOutline(name, place);
      return this.art(found).region;
    };
    const make = () =>
      completingArt(this.#drawer.strip, spec, where, this.#warn, { drawer: this.#drawer, other, work: this.#work });
    // What the drawer draws counts against the pattern's budget each time; composed regions depend on others.
    if (spec.shape !== undefined || spec.motif !== undefined || isComposed(spec)) return yield* make();
    const what = { by: ["art", artSpecOf(spec), where], of: [], said: () => this.#said };
    return yield* rememberPausing(this.#remember, what, make);
  }

  /** Whether a region, or one that it is composed with, stands on some tiles only. */
  variesByTile(index: number): boolean {
    const spec = this.#specs[index];
    if (spec.tiles !== undefined) return true;
    return othersOf(spec).some(({ name, at }) =>
      this.variesByTile(this.#find(name, `${this.#where}.regions[${index}]${at}`)),
    );
  }

  #find(name: string, place: string): number {
    const found = this.#specs.flatMap((spec, i) => (spec.name === name ? [i] : []));
    if (found.length === 1) return found[0];
    const names = [...new Set(this.#specs.flatMap((spec) => spec.name ?? []))];
    throw new AnnuletError(
      found.length === 0
        ? {
            code: "region-unknown",
            message: `no region has the name ${JSON.stringify(name)}`,
            path: place,
            value: name,
            allowed: names.slice(0, SHOWN_NAMES).join(", ") || "none: no region has a name",
            hint: nearest(name, names) ?? 'give the region meant a "name"',
          }
        : {
            code: "region-ambiguous",
            message: `${found.length} regions have the name ${JSON.stringify(name)}`,
            path: place,
            value: name,
            allowed: "a name that one region has",
            hint: `rename all but one of ${found.map((i) => `${this.#where}.regions[${i}]`).join(", ")}`,
          },
    );
  }

  #cycle(index: number, place: string): AnnuletError {
    const around = [...this.#open.slice(this.#open.indexOf(index)), index];
    return new AnnuletError({
      code: "region-cycle",
      message: `the region is composed with itself: ${around.map((i) => this.#specs[i].name).join(" → ")}`,
      path: place,
      value: this.#specs[index].name,
      allowed: "regions that do not lead back to this one",
    });
  }
}

/** The region without what its art does not depend on. */
function artSpecOf({ beads: _, height: _h, depth: _d, round: _r, section: _s, ...art }: RegionSpec): ArtSpec {
  return art;
}

function noOutline(name: string, place: string): AnnuletError {
  return new AnnuletError({
    code: "region-without-outline",
    message: `the region ${JSON.stringify(name)} is a height map, which has no outline to compose with`,
    path: place,
    value: name,
    allowed: "a region that is drawn",
  });
}

/** Most names that a message lists. */
const SHOWN_NAMES = 20;
