/**
 * A group of placed stones with what lies round each, and the parts of their settings.
 */
import { STONE_DEFAULTS, type StoneGroupSpec } from "../design/stones/stone-group.js";
import type { PlacedStone } from "./placed-stone.js";
import type { GroupParts, SetStone } from "./settings/group.js";
import type { Opening } from "./settings/hollow.js";
import { setGroup } from "./settings/set-group.js";
import { shapesOf } from "./settings/shape-of.js";
import { aroundStone, footUnder, type SurroundingsOptions } from "./surroundings.js";

export interface SetStonesOptions extends SurroundingsOptions {
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** Facets of the band round the finger, and where they begin, radians. */
  readonly facets: number;
  readonly startAngle: number;
}

/** @param group stones of one group, at least one */
export function setStones(
  group: readonly PlacedStone[],
  options: SetStonesOptions,
): GroupParts & { readonly set: readonly SetStone[] } {
  const [{ setting, through }] = group;
  const { tolerance, facets, startAngle } = options;
  const shapeOf = shapesOf(tolerance);
  const set = group.map((placed): SetStone => {
    const shape = shapeOf(placed.stone);
    const around = aroundStone(placed, shape.crown, options);
    return {
      shape,
      frame: placed,
      around,
      footUnder: (outline) => footUnder(placed, outline, around, options),
      row: placed.row,
    };
  });
  const opening = openingOf(through, setting.pilot);
  return { set, ...setGroup(set, { setting, opening, tolerance, facets, startAngle }) };
}

function openingOf(through: StoneGroupSpec["through"], pilot: number): Opening | undefined {
  if (through === false) return undefined;
  if (through === true) return { size: pilot, edge: STONE_DEFAULTS.edge, round: true };
  return { size: through.size ?? pilot, edge: through.edge, round: through.shape === "round" };
}
