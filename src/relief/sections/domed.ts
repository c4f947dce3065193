/**
 * A pillow: an arc of a circle rises from the outline and is level where it ends.
 *
 * Over a disc it is the cap of a sphere: radius ρ = (L² + K²) / 2K for a rise K over the reach L.
 */
import { type Arc, chordCount } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { showLength } from "../../base/units.js";
import type { DomedSection } from "../../design/sections/domed.js";
import { roundEdge } from "./edge-radius.js";
import { misfit, type SectionForm } from "./section-form.js";
import { foot } from "./wall.js";

export const domedSection: SectionForm<DomedSection> = {
  draw({ height, wall, radius: edge, reach, draft }, frame) {
    const length = reach ?? frame.reach();
    const rise = height - wall;
    if (rise <= 0 || rise > length) {
      throw misfit(frame, "height", {
        message: `a dome on a wall of ${showLength(wall)} cannot end ${showLength(height)} high ${showLength(length)} inside the outline: it would be ${rise > 0 ? "more than a quarter circle" : "no rise"}`,
        value: height,
        allowed: `above ${showLength(wall)} to ${showLength(Math.floor((wall + length) * 1000) / 1000)}`,
        hint: "make it lower, its wall higher, or the region wider",
      });
    }
    const radius = (length * length + rise * rise) / (2 * rise);
    const sweep = Math.asin(Math.min(1, length / radius));
    if (edge > 0) {
      const start = Math.PI / 2 + sweep;
      const dome: Arc = { kind: "arc", centre: [length, height - radius], radius, start, sweep: -sweep };
      return roundEdge({ wall, draft, radius: edge }, [dome], frame);
    }
    const count = chordCount(radius, sweep, frame.tolerance);
    const arc = Array.from({ length: count }, (_, i): Point2 => {
      const angle = sweep * (1 - (i + 1) / count);
      return [length - radius * Math.sin(angle), height - radius * (1 - Math.cos(angle))];
    });
    return [...foot(wall, draft), [0, wall], ...arc];
  },
};
