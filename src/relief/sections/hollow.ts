/**
 * A dish: behind a rim, an arc of a circle falls from it and is level where it ends.
 */
import { chordCount } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { showLength } from "../../base/units.js";
import type { HollowSection } from "../../design/sections/hollow.js";
import { edgeTooLarge } from "./flat.js";
import { misfit, type SectionForm } from "./section-form.js";
import { roundedWall } from "./wall.js";

export const hollowSection: SectionForm<HollowSection> = {
  draw({ height, dip, round, rim, reach, draft }, frame) {
    const { tolerance, path } = frame;
    if (round > height) {
      const why = "the rim is only so high";
      throw edgeTooLarge({ path, field: "round", value: round, largest: height, why });
    }
    const edge = roundedWall(height, round, draft, tolerance);
    const start = edge[edge.length - 1][0] + rim;
    const end = reach ?? frame.reach();
    const most = Math.min(height, end - start);
    if (dip > most || dip === height) {
      throw misfit(frame, "dip", {
        message: `a hollow ${showLength(dip)} deep does not fit behind the rim: it has ${showLength(Math.max(0, end - start))} to fall in, and ${showLength(height)} to the seat`,
        value: dip,
        allowed: `above 0 to ${showLength(Math.max(0, Math.floor(most * 1000) / 1000))}`,
        hint: "make it shallower, the rim or its rounding narrower, or the region wider",
      });
    }
    const radius = ((end - start) ** 2 + dip * dip) / (2 * dip);
    const sweep = Math.asin(Math.min(1, (end - start) / radius));
    const count = chordCount(radius, sweep, tolerance);
    const arc = Array.from({ length: count }, (_, i): Point2 => {
      const angle = sweep * (1 - (i + 1) / count);
      return [end - radius * Math.sin(angle), height - dip + radius * (1 - Math.cos(angle))];
    });
    return [...edge, ...(rim > 0 ? [[start, height] as const] : []), ...arc];
  },
};
