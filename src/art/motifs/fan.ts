/**
 * A fan: ribs that spread from a boss, as on a shell.
 */

import { radians } from "../../base/units.js";
import { fanMotif } from "../../design/motifs/fan.js";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { around, disc, petal, repeat, widestAt } from "./outlines.js";

/** Ribs are pointed at the boss and nearly round outside. */
const TIPS = [1.2, 0.15] as const;

/** Radius of the boss and greatest width of a rib, share of the fan's radius. */
const BOSS = 0.17;
const ROUNDEST = 0.42;

/** Height and width of all, share of the tile's. */
const SPAN = 0.9;

export const fan: Motif<typeof fanMotif> = {
  ...fanMotif,
  draw({ ribs, spread, fullness }, { aspect }) {
    const step = radians(spread) / (ribs - 1);
    const side = Math.sin(Math.min(radians(spread) / 2, Math.PI / 2));
    const radius = Math.min((SPAN * aspect) / (1 + BOSS), SPAN / (2 * side));
    const foot = (-radius * (1 - BOSS)) / 2;
    const inner = (BOSS + 0.06) * radius + LEAST_DETAIL;
    const widest = inner + (radius - inner) * widestAt(TIPS);
    const room = 2 * widest * Math.sin(step / 2) - LEAST_DETAIL;
    const width = fullness * Math.min(room, ROUNDEST * radius);
    const rib = (i: number) => {
      const turn = Math.PI / 2 + (i - (ribs - 1) / 2) * step;
      return petal(around([0.5, foot], turn, inner), around([0.5, foot], turn, radius), width, TIPS);
    };
    return { path: `${disc([0.5, foot], BOSS * radius)} ${repeat(ribs, rib)}` };
  },
};
