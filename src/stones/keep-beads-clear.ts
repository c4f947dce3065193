/**
 * Milgrain where stones stand: beads that would reach into a stone or its hollow are left out.
 */
import type { Warn } from "../base/errors.js";
import { PointGrid } from "../base/math/point-grid.js";
import type { Bead } from "../beads/bead.js";
import { fromSpace } from "./frame.js";
import type { PlacedStone } from "./placed-stone.js";
import { ROOM } from "./settings/hollow.js";
import { fromGirdle } from "./settings/neighbours.js";
import { shapesOf } from "./settings/shape-of.js";

/** Beads this near to a hollow would be cut to slivers, mm (chosen). */
const NEAR = 0.02;

/** The beads that stay. Warns `beads-cleared` with the number of those that do not. */
export function keepBeadsClear(
  beads: readonly Bead[],
  stones: readonly PlacedStone[],
  { tolerance, warn }: { readonly tolerance: number; readonly warn: Warn },
): readonly Bead[] {
  if (beads.length === 0 || stones.length === 0) return beads;
  const shapeOf = shapesOf(tolerance);
  const standing = stones.map((stone) => ({
    shape: shapeOf(stone.stone),
    frame: stone,
    ...besideOf(stone),
  }));
  const reach = Math.max(...standing.map(({ shape, beside }) => Math.hypot(shape.length, shape.width) / 2 + beside));
  const widest = Math.max(...beads.map(({ radius }) => radius));
  // Up and down a stone reaches as far as it is deep, sideways as far as it is long.
  const deepest = Math.max(...standing.map(({ shape }) => shape.pavilion + shape.band + shape.crown));
  const grid = new PointGrid<(typeof standing)[number]>(reach + deepest + widest + NEAR);
  for (const one of standing) grid.add(one.frame.at, one);
  const kept = beads.filter(({ centre, radius }) =>
    grid.near(centre).every((one) => {
      const [, , z] = fromSpace(one.frame, centre);
      const { band, pavilion } = one.shape;
      return z + radius < -band - pavilion || fromGirdle(one, centre) >= radius + one.beside + NEAR;
    }),
  );
  const lost = beads.length - kept.length;
  if (lost > 0) {
    warn({
      code: "beads-cleared",
      message: `${lost} bead${lost === 1 ? " is" : "s are"} left out where stones are; the runs are counted as laid out`,
      path: "stones",
      value: lost,
    });
  }
  return kept;
}

/** How far beside a girdle metal is cut away, mm. */
function besideOf({ setting }: PlacedStone): { readonly beside: number } {
  return { beside: ROOM + (setting.form === "bead-set" ? setting.border : 0) };
}
