/**
 * How far from a stone's middle metal is worked for it.
 */
import { vec3 } from "gl-matrix";
import type { StoneView } from "./stone-view.js";
import { LEAST_PRONG, PRONG_SHARE, ROOM } from "./told.js";

/** Half of a stone's extent with the metal beside it that is made for it, mm. */
export function asideOf({ length, width, placed: { setting } }: StoneView): number {
  const half = Math.hypot(length, width) / 2;
  const round = length === width && half > width / 2 ? width / 2 : half;
  switch (setting.form) {
    case "bezel":
      return round + setting.wall + ROOM;
    case "bead-set":
      return round + setting.border + setting.grain * width + 2 * ROOM;
    case "prongs":
      return round + (setting.diameter ?? Math.max(LEAST_PRONG, PRONG_SHARE * width)) + 2 * ROOM;
    case "channel":
      return round + (setting.rise > 0 ? setting.wall : 0) + ROOM;
    case "flush":
      return round + ROOM;
  }
}

/** How far along its row what goes along that is this stone's, mm: half way to its neighbours; 0 where nothing goes along rows. */
export function beyondOf(view: StoneView, views: readonly StoneView[]): number {
  const { row, setting, group, at } = view.placed;
  const isSwept = setting.form === "channel" || (setting.form === "bead-set" && setting.border > 0);
  if (row === undefined || !isSwept) return 0;
  return views.reduce((far, { placed: other }) => {
    if (other.group !== group || other.row?.row !== row.row) return far;
    const apart = Math.abs(other.row.index - row.index);
    const isNext = apart === 1 || (row.closed && apart === row.count - 1);
    return isNext ? Math.max(far, vec3.distance(at, other.at) / 2) : far;
  }, 0);
}
