/**
 * From the finished piece to the master: allowances, weights, the sprue, the scale.
 *
 * The casting before it is finished is the same stages over a design whose sizes are larger (`casting/as-cast.ts`). The
 * report stays that of the finished piece; of the casting's warnings it tells those that were not said of the finished
 * one in the same words.
 */
import { addSprue, type SpruedRing, type SprueReport, weighSprue } from "../../casting/add-sprue.js";
import { type CastingAllowance, castingAllowance } from "../../casting/allowances/allowance.js";
import { type Allowances, allowanceColumns } from "../../casting/allowances/columns.js";
import { scaleToMaster, sizesOf, volumesOf } from "../../casting/piece.js";
import { CASTING_DEFAULTS } from "../../design/casting.js";
import { materialsOf } from "../../design/materials.js";
import type { Alloy } from "../../measure/alloys/alloy.js";
import { findAlloy } from "../../measure/alloys/catalogue.js";
import { type WeightTable, weighPiece } from "../../measure/weights/weight-table.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Answers, From, OfDesign, OfOption } from "../answers.js";
import type { Tools } from "../stage.js";

/** Answers of the casting before it is finished. */
interface OfCast<Name extends keyof Answers> {
  readonly cast: From<Name>;
}

export function allowance({ design }: OfDesign<"casting">): CastingAllowance {
  return castingAllowance(design.casting);
}

/** What the master is made of. */
export function patternMetal({ design }: OfDesign<"alloys" | "casting">): Alloy {
  return findAlloy(design.casting?.pattern ?? CASTING_DEFAULTS.pattern, { alloys: materialsOf(design) });
}

export function allowances(
  from: From<"allowance" | "metal" | "patternMetal" | "profile" | "pattern" | "measure"> &
    OfCast<"profile" | "pattern" | "measure">,
): Allowances {
  const { allowance, metal, patternMetal: pattern, cast } = from;
  return allowanceColumns(sizesOf(from), sizesOf(cast), { allowance, metal, pattern });
}

export function weights(
  from: OfDesign<"alloys" | "costing"> &
    From<"allowance" | "allowances" | "patternMetal" | "measure"> &
    OfCast<"measure">,
): WeightTable {
  const { design, allowance, allowances, patternMetal: pattern, measure, cast } = from;
  const volumes = volumesOf(measure.volume, cast.measure.volume, allowances.master.volume, allowance);
  return weighPiece(volumes, { alloys: materialsOf(design), pattern, ...design.costing });
}

/** The casting with its sprue; undefined where none is drawn. */
export function sprued(
  { design, option, cast }: OfDesign<"sprue" | "tolerance"> & OfOption<"kernel"> & OfCast<"profile" | "solid">,
  { signal }: Tools,
): Promise<SpruedRing> | undefined {
  if (design.sprue === undefined) return undefined;
  const { tolerance } = design;
  return addSprue(cast.solid, design.sprue, { profile: cast.profile, tolerance, kernel: option.kernel, signal });
}

export function sprue({ sprued, metal }: From<"sprued" | "metal">): SprueReport | null {
  return sprued === undefined ? null : weighSprue(sprued.figures, metal);
}

export function masterPiece({ allowance, castPiece }: From<"allowance" | "castPiece">): Mesh {
  return scaleToMaster(castPiece, allowance.scale);
}
