/** A hollow outside: a circular arc, lowest in the middle. */
import { arcBySagitta } from "../../../base/math/curve.js";
import type { ConcaveSpec } from "../../../design/profile/outsides/concave.js";
import { type OutsideForm, unchanged } from "../form.js";
import { Misfit } from "../misfit.js";

export const concave: OutsideForm<ConcaveSpec> = {
  finished: "seat",
  grown: unchanged,
  sketch({ dip, edge }, { halfWidth, top }) {
    if (dip > halfWidth) {
      throw new Misfit("dip-too-large", "the hollow is deeper than half the band's width", ["outside.dip"]);
    }
    const segment = arcBySagitta([halfWidth, top], [-halfWidth, top], -dip);
    return { links: [{ segment, round: edge, seat: true }], edge, thins: "dip" };
  },
};
