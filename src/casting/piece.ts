/**
 * The piece at its three times: finished, as it comes from the flask, and the master that is scaled for shrinkage.
 */

import type { Band } from "../band/band.js";
import { seatWall } from "../band/profile/seat-wall.js";
import { thicknessOf } from "../band/profile/thickness-of.js";
import type { Problem } from "../base/errors.js";
import type { PieceVolumes } from "../measure/weights/weight-table.js";
import type { Mesh } from "../mesh/mesh.js";
import { transformMesh } from "../mesh/transform.js";
import type { Pattern } from "../pattern/laid-out.js";
import type { AxisScale, CastingAllowance } from "./allowances/allowance.js";
import type { PieceSizes } from "./allowances/columns.js";
import { holdRounded } from "./hold-rounded.js";

/** The piece at one of its three times: with the design's sizes, as it comes from the flask, as it is printed. */
export type PieceTime = "finished" | "cast" | "master";

/** A piece that was built and measured. */
export interface Built {
  readonly profile: Band;
  readonly pattern: Pattern;
  readonly measure: { readonly volume: number };
}

/** The sizes that allowances change, mm and mm³. */
export function sizesOf({ profile, pattern, measure }: Built): PieceSizes {
  return {
    bore: 2 * profile.boreRadius,
    width: profile.width,
    thickness: thicknessOf(profile),
    wall: Math.min(...profile.looks.map((angle) => seatWall(profile.sectionAt(angle)))),
    relief: pattern.bodies.some(({ mode }) => mode === "raised") ? pattern.height : null,
    volume: measure.volume,
  };
}

/** The volumes that weights are worked out from, mm³. `master` is that of the master's file. */
export function volumesOf(
  finished: number,
  cast: number,
  master: number,
  { patternScale: { axial, radial } }: CastingAllowance,
): PieceVolumes {
  return { finished, cast, master, pattern: cast * radial ** 2 * axial };
}

/**
 * The casting's mesh as large as the master's.
 *
 * @throws AnnuletError `not-closed` where the scaled mesh fails the gate
 */
export function scaleToMaster(mesh: Mesh, { axial, radial }: AxisScale): Mesh {
  if (axial === 1 && radial === 1) return mesh;
  const scaled = transformMesh(mesh, [radial, 0, 0, 0, 0, radial, 0, 0, 0, 0, axial, 0, 0, 0, 0, 1]);
  return holdRounded(scaled);
}

/** Names the unfinished casting in what is said of it: the finished piece may be sound. */
export function saidOfCasting(problem: Problem): Problem {
  return { ...problem, message: `with casting.finishing added, before it is taken off: ${problem.message}` };
}
