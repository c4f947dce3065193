// Across: every motif on whole rings
/** Every motif as a ring on five bands of different forms and sizes. */
import { describe, expect, it } from "vitest";
import { sampleRegion } from "../../../src/art/motifs/sample.js";
import { build } from "../../../src/ring/build.js";
import { entries } from "./motifs.js";

/** Coarse enough for a ring to take a fraction of a second, mm. */
const COARSE = 0.06;

const comfort = { form: "comfort", rise: 0.15, edge: 0.2 };

interface Band {
  readonly diameter: number;
  readonly repeats: number;
  readonly rows: number;
  readonly thickness: number;
  readonly bore: object;
  readonly outside: object;
}

const BANDS: readonly (readonly [string, Band])[] = [
  ["flat", { diameter: 16, repeats: 10, rows: 1, thickness: 1.7, bore: { form: "flat" }, outside: { form: "flat" } }],
  [
    "domed",
    { diameter: 17.3, repeats: 10, rows: 1, thickness: 2, bore: comfort, outside: { form: "domed", rise: 0.4 } },
  ],
  [
    "channel",
    {
      diameter: 18.2,
      repeats: 11,
      rows: 1,
      thickness: 2.2,
      bore: comfort,
      outside: { form: "channel", rail: 0.8, depth: 0.6 },
    },
  ],
  [
    "concave in two rows",
    { diameter: 19, repeats: 14, rows: 2, thickness: 2.2, bore: comfort, outside: { form: "concave", dip: 0.3 } },
  ],
  [
    "bevelled",
    {
      diameter: 21,
      repeats: 12,
      rows: 1,
      thickness: 2,
      bore: { form: "flat" },
      outside: { form: "bevelled", bevel: 0.4, drop: 0.3 },
    },
  ],
];

describe.each(entries)("%s", (name, motif) => {
  it.each(BANDS)("closes on a %s band, clean", async (_, { diameter, repeats, rows, thickness, bore, outside }) => {
    const aspect = motif.aspect.natural;
    const tileWidth = (Math.PI * (diameter + 2 * thickness)) / repeats;
    const { report } = await build({
      annulet: 1,
      name,
      size: { diameter },
      tolerance: COARSE,
      profile: { width: rows * aspect * tileWidth, thickness, bore, outside },
      pattern: {
        fit: { repeats, rows, aspect },
        symmetry: motif.group,
        regions: [sampleRegion(motif, tileWidth)],
      },
    });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1, genusExpected: 1 });
    const codes = report.warnings.map(({ code }) => code);
    for (const code of ["hairline", "genus-differs", "kernel-replaced"]) expect(codes).not.toContain(code);
  });
});
