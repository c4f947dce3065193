/**
 * Stones on bands for tests of settings: rows laid out by a formula of their own, where the band is the same all round.
 */
import type { Band } from "../../src/band/band.js";
import { makeBand } from "../../src/band/make-band.js";
import type { BandSurface } from "../../src/band/surface/surface.js";
import { radians, TURN } from "../../src/base/units.js";
import { profileSchema } from "../../src/design/profile/profile.js";
import { stoneGroupSchema } from "../../src/design/stones/stone-group.js";
import type { Stone } from "../../src/gems/stone.js";
import { stoneOf } from "../../src/gems/stone-of.js";
import type { PlacedStone } from "../../src/stones/placed-stone.js";

/** A plain flat band of 5 × 2.4 mm. */
export const FLAT_BAND = {
  annulet: 1,
  name: "Stones",
  size: { system: "iso", value: 54 },
  profile: { width: 5, thickness: 2.4, outside: { form: "flat" } },
} as const;

/** The same as a band. */
export function flatBand(): Band {
  return makeBand(profileSchema.parse(FLAT_BAND.profile), 54 / TURN, 0.01);
}

export interface RowOptions {
  /** How many stones. */
  readonly count: number;
  /** Across the band, mm. Default 0. */
  readonly v?: number;
  /** Angles of the first and the last, degrees. Default once round from the top. */
  readonly from?: number;
  readonly to?: number;
  /** Number of the group. Default 0. */
  readonly group?: number;
}

/** A row of alike stones on the seat of a revolved band; `document`: as a group of a design has it, but for its place. */
export function rowOfStones(
  wrap: Pick<BandSurface, "lineAt" | "uAt">,
  document: Record<string, unknown>,
  { count, v = 0, from = 90, to = 450, group = 0 }: RowOptions,
): PlacedStone[] {
  const spec = stoneGroupSchema.parse({ place: { form: "row" }, ...document });
  const asked = { cut: spec.cut, size: spec.size, width: spec.width, gem: spec.gem, proportions: spec.proportions };
  const { heights, ...facts } = stoneOf(asked);
  const { cut, length, width, narrow, proportions, gem } = facts;
  const stone: Stone = { cut, length, width, proportions, gem, ...(narrow === undefined ? {} : { narrow }) };
  const level = spec.level ?? 0;
  const closed = to - from >= 360;
  return Array.from({ length: count }, (_, index): PlacedStone => {
    const share = closed ? index / count : count === 1 ? 0 : index / (count - 1);
    const angle = radians(from + (to - from) * share);
    const line = wrap.lineAt(angle);
    const [w, r] = line.point(v, level - heights.crown);
    const [nw, nr] = line.normal(v);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return {
      group,
      number: index + 1,
      stone,
      at: [r * cos, r * sin, w],
      out: [nr * cos, nr * sin, nw],
      along: [-sin, cos, 0],
      level,
      surface: { name: "seat", u: wrap.uAt(angle), v, angle },
      setting: spec.setting,
      through: spec.through,
      row: count === 1 ? undefined : { row: 0, index, count, closed },
    };
  });
}
