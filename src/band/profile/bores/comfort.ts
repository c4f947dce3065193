/** A comfort bore: a circular arc, narrowest in the middle. */
import { arcBySagitta } from "../../../base/math/curve.js";
import type { ComfortBoreSpec } from "../../../design/profile/bores/comfort.js";
import { type BoreForm, unchanged } from "../form.js";
import { Misfit } from "../misfit.js";

export const comfortBore: BoreForm<ComfortBoreSpec> = {
  grown: unchanged,
  sketch({ rise, edge }, { halfWidth, boreRadius }) {
    if (rise > halfWidth) {
      throw new Misfit("rise-too-large", "the bore rises more than half the band's width", ["bore.rise"]);
    }
    const ends = boreRadius + rise;
    const segment = arcBySagitta([-halfWidth, ends], [halfWidth, ends], rise);
    return {
      link: { segment, round: edge },
      radiusAt: (w) =>
        segment.kind === "line" ? ends : segment.centre[1] - Math.sqrt(Math.max(segment.radius ** 2 - w * w, 0)),
      thins: "rise",
    };
  },
};
