/**
 * A stone's hollow in closed form: a wall along the girdle, a cone to the pavilion's angle, a pilot, an opening.
 */
import type { Point3 } from "../../../base/math/point.js";
import type { StoneView } from "./stone-view.js";
import { BELOW_CULET, bulgeOf, ROOM } from "./told.js";
import type { ToldBody } from "./told-body.js";

export interface HollowSizes {
  /** Share of the width that the pilot has. */
  readonly pilot: number;
  /** Where the surface and the bore lie, in the stone's coordinates. */
  readonly bore: number;
  /** What lies higher is not its own, mm. */
  readonly above: number;
  /** Whether it narrows again over the girdle as the crown does. */
  readonly crowned?: boolean;
}

/** Height of the bearing's upper edge at most: where a cone to the pavilion's angle keeps its room from the girdle. */
export function edgeOf({ band, pavilion, width, placed }: StoneView): number {
  const slope = pavilion / ((width * (1 - placed.stone.proportions.culet)) / 2);
  return -band - ROOM * (Math.hypot(1, slope) - slope);
}

/** Whether a point lies in a stone's hollow. */
export function hollowHolds(view: StoneView, { pilot, bore, above, crowned = false }: HollowSizes): ToldBody["holds"] {
  const { width, band, pavilion, placed } = view;
  const { through, stone, setting } = placed;
  const { keel } = view;
  const edge = edgeOf(view);
  const depth = pavilion * ((width / 2 + ROOM) / ((width * (1 - stone.proportions.culet)) / 2));
  const share = (size: number) => (size * width) / (width + 2 * ROOM);
  const culet = -band - pavilion;
  const floor = culet - Math.min(BELOW_CULET, (culet - bore) / 2);
  const opening =
    through === false
      ? undefined
      : through === true
        ? { size: setting.pilot, edge: 0.1, shape: "round" as const }
        : through;
  const isFlat = pavilion === 0 && opening === undefined;
  const wide = opening && Math.min(opening.size ?? setting.pilot, setting.form === "bezel" ? pilot : 1);
  return (point, grown) => {
    const [x, y, z] = view.local(point);
    if (z > above + grown) return false;
    const inPilot = () => view.outsideShare(x, y, { by: ROOM, share: share(pilot), keel }) <= grown;
    if (setting.ready !== "pilot") {
      // Facets that bulge beyond the cone move it down: by how much is not told.
      const lowest = edge - (grown > 0 ? bulgeOf(placed.stone) : 0) - grown;
      if (z >= (grown < 0 ? edge - grown : lowest))
        return view.outside(x, y) <= ROOM + grown && (!crowned || underCrown(view, [x, y, z], grown));
      const from = grown < 0 ? edge - grown : lowest;
      const part = depth === 0 ? 0 : 1 - (from - z) / depth;
      if (part > share(pilot) && view.outsideShare(x, y, { by: ROOM, share: part, keel }) <= grown) return true;
    }
    if (isFlat) return false;
    if (z >= floor - grown && inPilot()) return true;
    if (opening === undefined || wide === undefined || z < bore - 1) return false;
    const flare = Math.max(0, Math.min(opening.edge, (floor - bore) / 2) + bore - z);
    if (opening.shape === "round" || view.radius !== undefined) {
      const middle = (keel[0] + keel[1]) / 2;
      return z <= floor + grown && Math.hypot(x - middle, y) <= (wide * width) / 2 + flare + grown;
    }
    return (
      z <= floor + grown &&
      view.outsideShare(x, y, { by: ROOM, share: share(wide + (2 * flare) / width), keel }) <= grown
    );
  };
}

/** Whether a place lies below the crown's cone one room away, or over the table. */
function underCrown(view: StoneView, [x, y, z]: Point3, grown: number): boolean {
  const { width, crown, placed } = view;
  const { table } = placed.stone.proportions;
  const slope = crown / ((width * (1 - table)) / 2);
  const lift = ROOM * (Math.hypot(1, slope) - slope) + (grown > 0 ? bulgeOf(placed.stone) : 0);
  const least = (table * width + 2 * ROOM) / (width + 2 * ROOM);
  const share = Math.max(least, Math.min(1, 1 - (z - lift - grown) / (slope * (width / 2 + ROOM))));
  return view.outsideShare(x, y, { by: ROOM, share, keel: [0, 0] }) <= grown;
}
