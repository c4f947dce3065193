/**
 * In which stone's hollow or groove a place of the solid lies, and whether it lies on a grain or prong.
 */
import type { Point3 } from "../../base/math/point.js";
import { PointGrid } from "../../base/math/point-grid.js";
import type { Axis } from "../proof/stones/posts.js";
import { type RowLine, rowLines } from "../proof/stones/row-line.js";
import type { StoneView } from "../proof/stones/stone-view.js";
import { LEAST_PRONG, PRONG_SHARE, ROOM } from "../proof/stones/told.js";
import type { ToldStones } from "../proof/stones/told-stones.js";

/** A stone whose hollow is seen, with the height of the bore under it in its own coordinates. */
export interface SeenStone {
  readonly view: StoneView;
  readonly bore: number;
}

/** Facets of a hollow lie off it by no more, mm, or so many tolerances (grains stand 0.02 mm off it). */
const ON = 0.015;
const ON_TOLERANCES = 1.5;

export class OnHollows {
  readonly #grid: PointGrid<SeenStone>;
  readonly #rows: readonly RowLine[];
  readonly #seen: ReadonlyMap<StoneView, SeenStone>;
  readonly #posts: PointGrid<Axis>;
  readonly #on: number;

  constructor(told: ToldStones, tolerance: number) {
    this.#on = Math.max(ON, ON_TOLERANCES * tolerance);
    const seen = told.views.map((view, i): SeenStone => ({ view, bore: told.bores[i] }));
    this.#seen = new Map(seen.map((one) => [one.view, one]));
    const deepest = ({ view, bore }: SeenStone) =>
      Math.hypot(view.length, view.width) / 2 + Math.max(-bore, view.crown);
    this.#grid = new PointGrid(Math.max(...seen.map(deepest)) + 1);
    for (const one of seen) this.#grid.add(one.view.placed.at, one);
    const grooves = told.views.filter(
      ({ placed }) => placed.setting.form === "channel" && placed.setting.ready !== "pilot",
    );
    this.#rows = grooves.length === 0 ? [] : (rowLines(grooves) ?? []);
    this.#posts = new PointGrid(Math.max(...told.views.map(({ length }) => length)) + 1);
    for (const axis of told.axes) this.#posts.add(axis.at, axis);
  }

  /** The stone; undefined where it is on none's. */
  at(point: Point3): SeenStone | undefined {
    for (const one of this.#grid.near(point)) {
      const [x, y, z] = one.view.local(point);
      if (z > one.bore + this.#on && one.view.outside(x, y) <= ROOM + this.#on) return one;
    }
    return this.#inGroove(point);
  }

  #inGroove(point: Point3): SeenStone | undefined {
    const [px, py, pz] = point;
    const stand = { point: [pz, Math.hypot(px, py)], way: [0, 0] } as const;
    for (const line of this.#rows) {
      const { x, y, z } = line.line({ angle: Math.atan2(py, px), start: point, way: [0, 0, 0], stand });
      const [{ length, width, band, pavilion }] = line.stones;
      const wide = line.stones[0].across(line.along).half + ROOM + this.#on;
      const end = line.stones.length === 1 ? length / 2 + ROOM : Math.max(length, width) / 2 + ROOM;
      if (Math.abs(x) > end + this.#on || Math.abs(y) > wide || z < -band - pavilion) continue;
      const nearest = line.stones.reduce((best, view) => (far(view, point) < far(best, point) ? view : best));
      return this.#seen.get(nearest);
    }
    return undefined;
  }

  /** Whether a place lies on a grain or prong. */
  isOnPost(point: Point3): boolean {
    return this.#posts.near(point).some(({ at, out, stones: [view] }) => {
      const away = point.map((x, k) => x - at[k]);
      const up = away[0] * out[0] + away[1] * out[1] + away[2] * out[2];
      return Math.sqrt(Math.max(0, Math.hypot(...away) ** 2 - up * up)) <= postRadius(view) + this.#on;
    });
  }
}

function far({ placed: { at } }: StoneView, [x, y, z]: Point3): number {
  return Math.hypot(x - at[0], y - at[1], z - at[2]);
}

/** Of a grain or of a prong's foot, mm. */
export function postRadius({ placed: { setting }, width }: StoneView): number {
  if (setting.form === "prongs") return (setting.diameter ?? Math.max(LEAST_PRONG, PRONG_SHARE * width)) / 2;
  return setting.form === "bead-set" ? (setting.grain * width) / 2 : 0;
}
