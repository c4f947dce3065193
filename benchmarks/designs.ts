/**
 * The designs that are timed: about 100, 400 and more than 1 000 beads. All of them are invented.
 */
import { readFileSync } from "node:fs";
import type { DesignInput } from "../src/design/schema.js";

export interface TimedDesign {
  readonly name: string;
  /** A design, or its text. */
  readonly document: unknown;
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

const small: TimedDesign = { name: "dewline band", document: example("dewline-band.json") };
const middle: TimedDesign = { name: "tideline wave", document: TIDELINE };
/** The README's design. */
export const large: TimedDesign = { name: "saltmarsh lattice", document: example("saltmarsh-lattice.json") };

export const designs: readonly TimedDesign[] = [small, middle, large];

/** Bead diameter of the designs with ever more beads, mm: small enough that the densest of them has 4 000. */
const FINE_BEAD = 0.12;

/** Spacings over diameter: each has about twice the beads of the one before it. */
const PITCHES = [20, 9, 4.4, 2.15, 1.06];

/** Beads of a rail on each of its 9 tiles at the densest spacing. They are counted, so that every tile has as many. */
const [TILES, RAIL_BEADS] = [9, 58];

/** The README's design with about 200 to 4 000 beads; all else is the same. */
export const beadier: readonly TimedDesign[] = PITCHES.map((pitch) => ({
  name: `beads every ${pitch} diameters`,
  document: latticeWith((design) => {
    for (const { beads } of design.pattern.regions) if (beads) Object.assign(beads, { diameter: FINE_BEAD, pitch });
    const count = TILES * evenNear((RAIL_BEADS * PITCHES[PITCHES.length - 1]) / pitch);
    design.beads = design.beads.map(() => ({ along: "rail", diameter: FINE_BEAD, count }));
  }),
}));

/** The even number nearest to one: a tile's halves have as many. */
function evenNear(value: number): number {
  return 2 * Math.max(1, Math.round(value / 2));
}

/** About the README's tile along the band: 28 make the largest bore. How far its reference radius lies outside the bore, mm. */
const [TILE, DEPTH] = [7, 1.35];

/** Beads of a rail on each tile of those rings, so that every tile has as many. */
const RAIL_BEADS_WIDE = 16;

/** The README's design on a ring that takes so many of its tiles: 7 is a child's finger, 28 a bangle. */
export const larger: readonly TimedDesign[] = [7, 14, 28].map((repeats) => ({
  name: `${repeats} repeats`,
  document: withRepeats(repeats),
}));

/** More than two million triangles: 28 repeats at a tolerance that a printer does not ask for. */
export const finest: TimedDesign = {
  name: "saltmarsh lattice, 28 repeats, tolerance 0.0015",
  document: { ...withRepeats(28), tolerance: 0.0015 },
};

/** A design's document as text. */
export function text({ document }: TimedDesign): string {
  return typeof document === "string" ? document : JSON.stringify(document);
}

function withRepeats(repeats: number): Lattice {
  return latticeWith((design) => {
    design.size = { diameter: (repeats * TILE) / Math.PI - 2 * DEPTH };
    design.pattern.fit.repeats = repeats;
    design.beads = design.beads.map(({ diameter }) => ({ along: "rail", diameter, count: RAIL_BEADS_WIDE * repeats }));
  });
}

/** As much of the README's document as is changed here. */
interface Lattice {
  size: object;
  pattern: { fit: { repeats: number | string }; regions: { beads?: Beads }[] };
  beads: Beads[];
}

interface Beads {
  along?: string;
  diameter: number;
  pitch?: number;
  count?: number;
}

function latticeWith(change: (design: Lattice) => void): Lattice {
  const design = JSON.parse(text(large));
  change(design);
  return design;
}

/** Found by the package's own name, so that it does not matter where this file was compiled to. */
function example(file: string): string {
  return readFileSync(new URL(`examples/${file}`, import.meta.resolve("annulet/package.json")), "utf8");
}
