/**
 * The designs that are timed: about 100, 400 and more than 1 000 beads. All of them are invented.
 */
import { readFileSync } from "node:fs";
import type { DesignInput } from "../src/design/schema.js";

export interface TimedDesign {
  readonly name: string;
  /** A design, or its text. */
  readonly document: DesignInput | string;
}

/** Two beaded rails and a beaded wave between them. */
const TIDELINE: DesignInput = {
  annulet: 1,
  name: "Tideline wave (invented for the benchmark)",
  size: { system: "iso", value: 54 },
  profile: {
    width: 6.4,
    thickness: 2,
    bore: { form: "comfort", rise: 0.2, edge: 0.3 },
    outside: { form: "channel", rail: 0.8, depth: 0.7, edge: 0.15 },
  },
  pattern: {
    symmetry: "p1",
    fit: { repeats: 14 },
    regions: [
      {
        name: "wave",
        path: "M 0 -0.2 Q 0.25 0.3 0.5 0.25 Q 0.75 0.3 1 -0.2",
        ribbon: { width: 0.6, join: "round" },
        height: 0.45,
        round: 0.08,
        beads: { diameter: 0.45, pitch: 1.1, on: "centre" },
      },
    ],
  },
  beads: [{ along: "rail", diameter: 0.52, pitch: 1.1 }],
  material: "ag925",
};

export const small: TimedDesign = { name: "dewline band", document: example("dewline-band.json") };
export const middle: TimedDesign = { name: "tideline wave", document: TIDELINE };
/** The README's design. */
export const large: TimedDesign = { name: "saltmarsh lattice", document: example("saltmarsh-lattice.json") };

export const designs: readonly TimedDesign[] = [small, middle, large];

/** Found by the package's own name, so that it does not matter where this file was compiled to. */
function example(file: string): string {
  return readFileSync(new URL(`examples/${file}`, import.meta.resolve("annulet/package.json")), "utf8");
}
