/**
 * From the finished piece to the master: finishing allowance on, then scaled for shrinkage.
 */

import type { Profile } from "../band/profile/profile.js";
import { seatWall } from "../band/profile/seat-wall.js";
import { AnnuletError } from "../base/errors.js";
import { CASTING_DEFAULTS } from "../design/casting.js";
import { materialsOf } from "../design/materials.js";
import type { Design } from "../design/schema.js";
import { assertSolid } from "../judge/gate.js";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { type WeightTable, weighPiece } from "../measure/weights/weight-table.js";
import type { Mesh } from "../mesh/mesh.js";
import { transformMesh } from "../mesh/transform.js";
import type { Pattern } from "../pattern/laid-out.js";
import { type AxisScale, castingAllowance, type Finishing, takesOff } from "./allowances/allowance.js";
import { type Allowances, allowanceColumns, type PieceSizes } from "./allowances/columns.js";

/** The piece at one of its three times: with the design's sizes, as it comes from the flask, as it is printed. */
export type PieceTime = "finished" | "cast" | "master";

/** A piece that was built. */
export interface Built {
  readonly mesh: Mesh;
  readonly design: Design;
  readonly profile: Profile;
  readonly pattern: Pattern;
  /** mm³ */
  readonly volume: number;
}

export interface Casting {
  /** The piece that was asked for. */
  readonly mesh: Mesh;
  readonly allowances: Allowances;
  readonly weights: WeightTable;
}

/**
 * Works out a piece's allowances and its mesh at one time.
 *
 * @param build builds it with a finishing allowance
 * @param dress what the casting carries beside the ring, and the master with it; no size or weight counts that
 * @throws what that throws, said of the unfinished casting; `not-closed` where the scaled mesh fails the gate
 */
export async function applyCasting(
  finished: Built,
  build: (finishing: Finishing) => Promise<Built>,
  time: PieceTime,
  dress: (cast: Built) => Promise<Mesh> = async ({ mesh }) => mesh,
): Promise<Casting> {
  const { casting, costing, material } = finished.design;
  const alloys = materialsOf(finished.design);
  const allowance = castingAllowance(casting);
  const { finishing, scale } = allowance;
  const cast = takesOff(finishing) ? await saidOfCasting(() => build(finishing)) : finished;
  const pattern = findAlloy(casting?.pattern ?? CASTING_DEFAULTS.pattern, { alloys });
  const metal = findAlloy(material, { alloys });
  const allowances = allowanceColumns(sizesOf(finished), sizesOf(cast), { allowance, metal, pattern });
  const { axial, radial } = allowance.patternScale;
  const volumes = {
    ...{ finished: finished.volume, cast: cast.volume, master: allowances.master.volume },
    pattern: cast.volume * radial ** 2 * axial,
  };
  const weights = weighPiece(volumes, { alloys, pattern, ...costing });
  if (time === "finished") return { mesh: finished.mesh, allowances, weights };
  const dressed = await dress(cast);
  return { mesh: time === "cast" ? dressed : scaleMesh(dressed, scale), allowances, weights };
}

function sizesOf({ profile, pattern, volume }: Built): PieceSizes {
  return {
    bore: 2 * profile.boreRadius,
    width: profile.width,
    thickness: profile.thickness,
    wall: seatWall(profile),
    relief: pattern.bodies.some(({ mode }) => mode === "raised") ? pattern.height : null,
    volume,
  };
}

function scaleMesh(mesh: Mesh, { axial, radial }: AxisScale): Mesh {
  if (axial === 1 && radial === 1) return mesh;
  const scaled = transformMesh(mesh, [radial, 0, 0, 0, 0, radial, 0, 0, 0, 0, axial, 0, 0, 0, 0, 1]);
  // Rounded to float32 its points are others than those that passed the gate before.
  assertSolid(scaled);
  return scaled;
}

/** Names the unfinished casting in what goes wrong with it: the finished piece was sound. */
async function saidOfCasting<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (cause) {
    if (!(cause instanceof AnnuletError)) throw cause;
    const problems = cause.problems.map((problem) => ({
      ...problem,
      message: `with casting.finishing added, before it is taken off: ${problem.message}`,
    }));
    throw new AnnuletError(problems, { cause, warnings: cause.warnings });
  }
}
