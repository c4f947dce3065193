/**
 * What is measured on the solid beside stones, by rays: metal between their hollows, under them, beside them, and bezels.
 */

import { PointGrid } from "../../base/math/point-grid.js";
import { TURN } from "../../base/units.js";
import type { StoneView } from "../proof/stones/stone-view.js";
import { ROOM } from "../proof/stones/told.js";
import type { ToldStones } from "../proof/stones/told-stones.js";
import { distance, type Wall, type WallRays } from "../wall-rays.js";
import { thinnestApart, WALL_DEFAULTS } from "../walls.js";
import { OnHollows } from "./on-hollows.js";
import type { Measured } from "./piece.js";

/** Rays through the solid with which all walls are measured. */
export interface SolidRays {
  readonly through: WallRays;
  readonly rays: readonly Wall[];
}

/** Kinds of walls beside stones. */
const KINDS = ["web", "under", "beside", "bezel"] as const;

type Kind = (typeof KINDS)[number];

export type StoneWalls = Readonly<Partial<Record<Kind, Measured>>>;

/** Rays that go so much along a stone's axis, as a cosine, go under it; those that go less than that go beside it (chosen). */
const DOWN = 0.8;
const SIDEWAYS = 0.5;

/** What stands over the surface by no more does not, mm: facets. */
const OVER = 0.02;

export function measureStoneWalls(told: ToldStones, { through, rays }: SolidRays, tolerance: number): StoneWalls {
  const kindOf = kinds(new OnHollows(told, tolerance));
  const found = new Map<Kind, Wall[]>();
  for (const wall of [...rays, ...raysBeside(told, through)]) {
    const kind = kindOf(wall);
    if (kind === undefined) continue;
    const known = found.get(kind);
    if (known === undefined) found.set(kind, [wall]);
    else known.push(wall);
  }
  const { places, apart } = WALL_DEFAULTS;
  const measured = [...found].flatMap(([kind, walls]) => {
    const thinnest = thinnestApart(walls, { through, places, apart, counts: (wall) => kindOf(wall) === kind });
    if (thinnest.length === 0) return [];
    const middles = thinnest.map(({ from, to }) => ({
      space: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2] as const,
    }));
    return [[kind, { figure: thinnest[0].thickness, places: middles }] as const];
  });
  return Object.fromEntries(measured);
}

/** Directions round a stone, and stones at most, in which rays are sent from its hollow's wall (chosen: some thousand rays). */
const AROUND = 12;
const MOST_STONES = 400;

/** Stones nearer to each other than this many of their lengths have a ray from the one towards the other. */
const NEAR = 2;

/** Hollows' walls are small, so that of all rays few meet them: these begin there, at the girdle and half way up to the surface, and under each stone. */
function raysBeside({ views, bores }: ToldStones, through: WallRays): Wall[] {
  const every = Math.max(1, Math.ceil(views.length / MOST_STONES));
  const grid = new PointGrid<StoneView>(NEAR * Math.max(...views.map(({ length }) => length)));
  for (const view of views) grid.add(view.placed.at, view);
  return views.flatMap((view, i) => {
    if (i % every !== 0) return [];
    const towards = grid.near(view.placed.at).flatMap((other) => {
      const [x, y] = view.local(other.placed.at);
      return other === view ? [] : [Math.atan2(y, x)];
    });
    const angles = [...towards, ...Array.from({ length: AROUND }, (_, k) => (TURN * k) / AROUND)];
    const places = angles.flatMap((angle) => {
      const far = view.reachAt(angle, ROOM);
      return [-view.band / 2, Math.max(0, -view.girdleLevel) / 2].map((z) =>
        view.space([far * Math.cos(angle), far * Math.sin(angle), z]),
      );
    });
    return [...places, view.space([0, 0, bores[i]])].flatMap((place) => through.near(place) ?? []);
  });
}

/** What kind of wall a ray goes through; undefined of what is none of them. */
function kinds(on: OnHollows): (wall: Wall) => Kind | undefined {
  return ({ from, to }) => {
    const [one, other] = [on.at(from), on.at(to)];
    if (one !== undefined && other !== undefined) return one === other ? undefined : "web";
    const stone = one ?? other;
    if (stone === undefined || on.isOnPost(from) || on.isOnPost(to)) return undefined;
    const { view, bore } = stone;
    const [inside, outside] = one === undefined ? [to, from] : [from, to];
    const [a, b] = [view.local(inside), view.local(outside)];
    const down = Math.abs(b[2] - a[2]) / distance(from, to);
    const { setting, through } = view.placed;
    if (down >= DOWN) return through === false && b[2] <= bore + BORE_FALLS ? "under" : undefined;
    if (down > SIDEWAYS) return undefined;
    if (setting.form === "bezel" && view.outside(b[0], b[1]) <= ROOM + setting.wall + OVER) return "bezel";
    return setting.form === "prongs" && a[2] > OVER - view.girdleLevel ? undefined : "beside";
  };
}

/** The bore falls away beside a stone's middle by no more, mm (chosen: a stone of 6 mm in a bore of 7 mm radius). */
const BORE_FALLS = 0.7;
