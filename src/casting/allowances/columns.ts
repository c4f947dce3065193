/**
 * The piece at three times: finished, as cast and before any finishing, and as the master that is printed.
 */
import type { Alloy } from "../../measure/alloys/alloy.js";
import { massOf } from "../../measure/mass.js";
import { type AxisScale, type CastingAllowance, type Finishing, isAllowed } from "./allowance.js";

/** The measures of a band that allowances change. Lengths in mm. */
export interface PieceSizes {
  /** Narrowest diameter of the bore. */
  readonly bore: number;
  readonly width: number;
  /** From the bore's narrowest circle to the outside's highest point, relief not counted. */
  readonly thickness: number;
  /** Least metal between the bore and the seat, nothing cut into it. */
  readonly wall: number;
  /** How high the relief stands above the seat, its beads not counted; null where there is none. */
  readonly relief: number | null;
  /** mm³ */
  readonly volume: number;
}

export interface AllowanceColumn extends PieceSizes {
  /** g, in `material`. */
  readonly weight: number;
  /** Symbol of what it is weighed in. */
  readonly material: string;
}

/** A ring at its three times: finished, cast, and as the master. */
export interface Allowances {
  /** Whether the master differs from the finished piece at all. */
  readonly any: boolean;
  readonly finished: AllowanceColumn;
  readonly cast: AllowanceColumn;
  readonly master: AllowanceColumn;
  /** The master over the casting, along the finger axis and across it. */
  readonly scale: AxisScale;
  readonly finishing: Finishing;
  /** What is compensated and what is not, in whole sentences. */
  readonly notes: readonly string[];
}

export interface AllowanceOptions {
  readonly allowance: CastingAllowance;
  /** The metal that is cast. */
  readonly metal: Alloy;
  /** What the master is made of. */
  readonly pattern: Alloy;
}

/** The three columns. `cast` has the finishing allowance and is not yet scaled. */
export function allowanceColumns(finished: PieceSizes, cast: PieceSizes, options: AllowanceOptions): Allowances {
  const { allowance, metal, pattern } = options;
  const { scale, finishing } = allowance;
  const weighed = (sizes: PieceSizes, alloy: Alloy): AllowanceColumn => {
    return { ...sizes, weight: massOf(sizes.volume, alloy), material: alloy.symbol };
  };
  return {
    any: isAllowed(allowance),
    finished: weighed(finished, metal),
    cast: weighed(cast, metal),
    master: weighed(scaled(cast, scale), pattern),
    scale,
    finishing,
    notes: notesOn(allowance),
  };
}

function scaled(
  { bore, width, thickness, wall, relief, volume }: PieceSizes,
  { axial, radial }: AxisScale,
): PieceSizes {
  return {
    bore: bore * radial,
    width: width * axial,
    thickness: thickness * radial,
    wall: wall * radial,
    relief: relief === null ? null : relief * radial,
    volume: volume * radial * radial * axial,
  };
}

function notesOn(allowance: CastingAllowance): string[] {
  if (!isAllowed(allowance)) {
    return [
      "No allowance: the master is the finished piece. Ask your caster what the metal shrinks and finishing takes.",
    ];
  }
  const { bore, rails, relief } = allowance.finishing;
  const faces = [
    ...(bore > 0 ? [`the bore by ${bore} mm`] : []),
    ...(rails > 0 ? [`the rails' tops (without a pattern, the outside) by ${rails} mm`] : []),
    ...(relief > 0 ? [`the tops of the relief by ${relief} mm`] : []),
  ];
  const left = "Side walls, channel floors, ribbon widths and beads are left as they are.";
  return [
    ...(faces.length > 0 ? [`Finishing is allowed for on ${faces.join(", ")}. ${left}`] : []),
    "Shrinkage is an estimate. Prove it with a test casting, and ask your caster.",
  ];
}
