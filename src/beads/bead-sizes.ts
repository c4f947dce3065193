/**
 * Diameters along a bead line: one size, two alternating, or graduated from one to another.
 *
 * A graduated open line grows evenly from its start to its end. One that closes, or that a symmetry turns end for end,
 * goes from the first diameter to the second half way along and back; one that only an even number of beads leaves
 * symmetric does so twice.
 */
import type { RunLine } from "../flat/runs.js";

export interface BeadSizesOptions {
  /** mm */
  readonly diameter: number;
  /** Diameter that the run goes over to, mm. */
  readonly to?: number;
  /** Diameter of every second bead, mm. */
  readonly alternate?: number;
}

/** Sizes along one line. */
export interface BeadSizes {
  /** Diameter of bead `index` of its leg, `share` of the line's length from its start, mm. */
  readonly at: (share: number, index: number) => number;
  readonly constant: boolean;
  readonly alternating: boolean;
  readonly least: number;
  readonly most: number;
  /** Mean of 1 / diameter over a leg, from share to share: how many spacings it holds for its length. */
  readonly density: (from: number, to: number) => number;
}

/** Points at which a leg's density is taken: enough that counts only round the other way where they are in doubt. */
const SAMPLES = 64;

export function beadSizes(
  { diameter, to, alternate }: BeadSizesOptions,
  line: Pick<RunLine, "kind" | "even" | "reverses">,
): BeadSizes {
  const other = to ?? alternate ?? diameter;
  const range = { least: Math.min(diameter, other), most: Math.max(diameter, other) };
  if (to !== undefined && to !== diameter) {
    const waves = line.kind === "open" ? (line.reverses ? 1 : 0.5) : line.even ? 2 : 1;
    const at = (share: number) => diameter + (to - diameter) * triangle(share * waves);
    const density = (from: number, end: number) => {
      let sum = 0;
      for (let i = 0; i < SAMPLES; i++) sum += 1 / at(from + ((end - from) * (i + 0.5)) / SAMPLES);
      return sum / SAMPLES;
    };
    return { ...range, at, constant: false, alternating: false, density };
  }
  if (alternate !== undefined && alternate !== diameter) {
    const density = () => 2 / (diameter + alternate);
    return {
      ...range,
      at: (_, index) => (index % 2 === 0 ? diameter : alternate),
      constant: false,
      alternating: true,
      density,
    };
  }
  return { ...range, at: () => diameter, constant: true, alternating: false, density: () => 1 / diameter };
}

/** 0 at whole numbers, 1 half way between, straight in between. */
function triangle(x: number): number {
  const rest = x - Math.floor(x);
  return rest <= 0.5 ? 2 * rest : 2 - 2 * rest;
}
