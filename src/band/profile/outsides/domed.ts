/** A domed outside: a circular arc from side wall to side wall. */
import { arcBySagitta } from "../../../base/math/curve.js";
import type { DomedSpec } from "../../../design/profile/outsides/domed.js";
import { type OutsideForm, unchanged } from "../form.js";
import { Misfit } from "../misfit.js";

export const domed: OutsideForm<DomedSpec> = {
  finished: "seat",
  grown: unchanged,
  sketch({ rise, edge }, { halfWidth, top }) {
    if (rise > halfWidth) {
      throw new Misfit("rise-too-large", "the dome rises more than half the band's width", ["outside.rise"]);
    }
    const segment = arcBySagitta([halfWidth, top - rise], [-halfWidth, top - rise], rise);
    return { links: [{ segment, round: edge, seat: true }], edge, thins: "rise" };
  },
};
