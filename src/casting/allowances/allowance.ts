/**
 * Casting allowances: what is added to the finished piece so that it is left when casting and finishing have taken theirs.
 *
 * What shrinks by s must be made 1 / (1 − s) times as large: at 1 + s, s² would be missing. A print that cures and a
 * pattern that is cast shrink one after the other, so their factors multiply.
 */
import { AnnuletError } from "../../base/errors.js";
import { type CastingSpec, MOST_FINISHING, SHRINKAGE_RANGE, type Shrinkage } from "../../design/casting-spec.js";

/** Factors along the finger axis and across it. */
export interface AxisScale {
  readonly axial: number;
  readonly radial: number;
}

/** mm off each face of a group. */
export interface Finishing {
  /** The bore. */
  readonly bore: number;
  /** The rails' tops; of a band without a pattern, its whole outside. */
  readonly rails: number;
  /** The tops of what is raised. */
  readonly relief: number;
}

export interface CastingAllowance {
  /** From the casting to the master's file. */
  readonly scale: AxisScale;
  /** Share of the scale that is the metal's: from the casting to the cured pattern. */
  readonly patternScale: AxisScale;
  readonly finishing: Finishing;
}

/**
 * The allowance that a document asks for.
 *
 * @throws AnnuletError `shrinkage-out-of-range`, `finishing-out-of-range`
 */
export function castingAllowance({ shrinkage = 0, cure = 0, finishing = 0 }: CastingSpec = {}): CastingAllowance {
  const patternScale = scaleAgainst(shrinkage, "casting.shrinkage");
  const print = scaleAgainst(cure, "casting.cure");
  const {
    bore = 0,
    rails = 0,
    relief = 0,
  } = typeof finishing === "number" ? { bore: finishing, rails: finishing, relief: finishing } : finishing;
  for (const [group, depth] of Object.entries({ bore, rails, relief })) requireFinishing(depth, group);
  return {
    scale: { axial: patternScale.axial * print.axial, radial: patternScale.radial * print.radial },
    patternScale,
    finishing: { bore, rails, relief },
  };
}

/** How many times as large a thing must be to end at its size when it has shrunk. */
export function scaleAgainst(shrinkage: Shrinkage, path = "shrinkage"): AxisScale {
  const { axial, radial } = typeof shrinkage === "number" ? { axial: shrinkage, radial: shrinkage } : shrinkage;
  const factor = (percent: number, direction: string) => {
    if (percent >= SHRINKAGE_RANGE.min && percent <= SHRINKAGE_RANGE.max) return 1 / (1 - percent / 100);
    throw new AnnuletError({
      code: "shrinkage-out-of-range",
      message: percent >= 100 ? "what shrinks by all of its length is gone" : "this is no shrinkage of a casting",
      path: typeof shrinkage === "number" ? path : `${path}.${direction}`,
      value: percent,
      allowed: `${SHRINKAGE_RANGE.min} to ${SHRINKAGE_RANGE.max} %, linear`,
      hint: "1.5 means that 100 mm of pattern become 98.5 mm of casting; ask your caster",
    });
  };
  return { axial: factor(axial, "axial"), radial: factor(radial, "radial") };
}

/** Whether anything is taken off any face. */
export function takesOff({ bore, rails, relief }: Finishing): boolean {
  return bore > 0 || rails > 0 || relief > 0;
}

/** Whether the master differs from the finished piece. */
export function isAllowed({ scale, finishing }: CastingAllowance): boolean {
  return scale.axial !== 1 || scale.radial !== 1 || takesOff(finishing);
}

function requireFinishing(depth: number, group: string): void {
  if (depth >= 0 && depth <= MOST_FINISHING) return;
  throw new AnnuletError({
    code: "finishing-out-of-range",
    message: "this is not what finishing takes off a face",
    path: `casting.finishing.${group}`,
    value: depth,
    allowed: `0 to ${MOST_FINISHING} mm`,
  });
}
