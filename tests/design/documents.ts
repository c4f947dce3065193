/** Designs that the tests of this folder start from. */
import type { DesignInput } from "../../src/design/schema.js";

/** The least that a design must say. */
export const plainBand = {
  annulet: 1,
  size: { system: "iso", value: 55 },
  profile: { width: 5, thickness: 2, outside: { form: "flat" } },
} as const satisfies DesignInput;

/** One that uses every part of the document. */
export const fullDesign = {
  $schema: "./design.schema.json",
  annulet: 1,
  name: "Saltmarsh lattice",
  size: { diameter: 17.5 },
  tolerance: 0.02,
  profile: {
    width: 7.4,
    thickness: 1.9,
    bore: { form: "comfort", rise: 0.25, edge: 0.4 },
    outside: { form: "channel", rail: 0.9, depth: 0.55, edge: 0.2 },
  },
  pattern: {
    fit: { repeats: 18, rows: 1, aspect: 1, hold: "band" },
    symmetry: "p2mm",
    cover: 300,
    regions: [
      {
        name: "petal",
        path: "M0 0 L0.5 0.4 L0.5 0 Z",
        ribbon: { width: 0.7, side: "inside" },
        height: 0.5,
        round: 0.08,
        beads: { diameter: 0.36, pitch: 1.05, on: 0.3 },
      },
      { path: "M0 0 H0.2 V0.2 Z", unit: "mm", height: 0.4, beads: { diameter: 0.3, on: "border" } },
    ],
  },
  beads: [
    { along: "rail", diameter: 0.4, pitch: 1.05 },
    { along: { v: 1.2 }, diameter: 0.4, count: 40 },
    { along: { path: "M0 0 L1 0" }, diameter: 0.4 },
  ],
  stones: [
    { size: 1.5, gem: "ruby", place: { form: "tile", at: [0.5, 0.2], turn: 30 }, setting: { form: "flush" } },
    {
      cut: "oval",
      size: 2,
      width: 1.6,
      proportions: { table: 0.58, crownAngle: 34 },
      place: { form: "row", along: "rail", over: { from: 30, to: 150 }, gap: 0.2 },
      setting: { form: "bead-set", grains: 3 },
      through: { shape: "cut", size: 0.5 },
    },
    { size: 1, gem: "own", place: { form: "line", path: "M 0 0 H 1", count: 3 }, setting: { form: "channel" } },
  ],
  gems: [{ symbol: "own", density: 3 }],
  material: "au750-white",
  casting: { shrinkage: 1.5, finishing: 0.05 },
  proud: true,
} as const satisfies DesignInput;
