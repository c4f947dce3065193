/**
 * Headroom: how far the relief stays below the rails that protect it.
 */
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";

/** Relief this little above the rails is rounding, mm. */
const ROUNDING = 1e-6;

/**
 * Rail height minus the relief's highest point, mm; undefined where there are no rails or no relief.
 *
 * @param railRadius radius of the rails' tops, mm
 * @param reliefRadius largest radius of relief and its beads, mm
 * @param proud whether the design lets relief stand above the rails
 * @throws AnnuletError `headroom` where it does so unasked, with by how much
 */
export function checkHeadroom(
  railRadius: number | undefined,
  reliefRadius: number | undefined,
  proud: boolean,
): number | undefined {
  if (railRadius === undefined || reliefRadius === undefined) return undefined;
  const headroom = railRadius - reliefRadius;
  if (headroom >= -ROUNDING || proud) return headroom;
  throw new AnnuletError({
    code: "headroom",
    message: `the relief with its beads stands ${showLength(-headroom)} above the rails and would wear first`,
    path: "pattern",
    value: Number((-headroom).toFixed(4)),
    allowed: "relief no higher than the rails",
    hint: 'lower the regions, sink the beads deeper, deepen the channel, or say "proud": true',
  });
}
