/**
 * The plan of a range: a base design, what varies, and what is made of each variant. Lengths in mm, angles in degrees.
 */
import { z } from "zod";
import { SIZE_SYSTEM_NAMES } from "../../size/system-names.js";

/** Version of the plan. */
const PLAN_VERSION = 1;

/** Most axes. Chosen: names grow with each. */
const MOST_AXES = 12;

/** Most values that one axis lists. Chosen. */
const MOST_VALUES = 10_000;

/** Most letters of a template. Chosen: file systems take names of 255 bytes, and endings follow. */
const LONGEST_NAME = 200;

/** What is written of each variant, with the ending of its file. */
export const OUTPUTS = {
  stl: ".stl",
  obj: ".obj",
  "3mf": ".3mf",
  glb: ".glb",
  sheet: ".sheet.html",
  picture: ".png",
  report: ".report.json",
  stones: ".stones.csv",
} as const;

/** One of the files that are made of a variant. */
export type OutputName = keyof typeof OUTPUTS;

/** Figures of a variant that are known before it is made. */
export const FIGURES = [
  "repeats",
  "tileWidth",
  "tileHeight",
  "bandWidth",
  "stretch",
  "weight",
  "rail",
  "beadRatio",
] as const;

export type FigureName = (typeof FIGURES)[number];

const FIGURES_IN_WORDS =
  "tileWidth, tileHeight, bandWidth, rail in mm; stretch without its sign: 0.03 is 3 %; weight in g, estimated; beadRatio: spacing over diameter of each run of beads";

/** Measures beside the systems by which sizes are stepped through. */
export const MEASURES = ["diameter", "circumference"] as const;

const span = z
  .strictObject({
    from: z.number().describe("least"),
    to: z.number().describe("most"),
  })
  .describe("a span, both ends included");

const step = z.number().positive().describe("from one value to the next, above 0");

const label = z.union([z.string(), z.number()]);

const system = z.enum([...SIZE_SYSTEM_NAMES, ...MEASURES]).describe("a size system; or diameter or circumference, mm");

const sizeAxis = z
  .strictObject({
    size: z.union([
      z.strictObject({
        system,
        from: label.describe("first label, or mm"),
        to: label.describe("last label, or mm"),
        step: step.describe("in the system's own sizes, 0.5 for halves; or mm"),
      }),
      z.strictObject({ system, values: z.array(label).min(1).max(MOST_VALUES).describe("labels, or mm") }),
    ]),
  })
  .describe("finger sizes");

const materialAxis = z
  .strictObject({ material: z.array(z.string()).min(1).max(MOST_VALUES).describe("symbols of alloys") })
  .describe("materials");

const path = z.string().describe("a value's place in the design, as errors show it: profile.width");

const axisName = z
  .string()
  .regex(/^[a-z][a-zA-Z0-9]*$/, "must be letters and digits, a small letter first")
  .optional()
  .describe("what it is called in names and tables; default the path's last key");

const valuesAxis = z
  .strictObject({
    path,
    name: axisName,
    values: z.array(z.unknown()).min(1).max(MOST_VALUES).describe("what is put there"),
  })
  .describe("any value of the design, listed");

const spanAxis = z
  .strictObject({ path, name: axisName, from: z.number().describe("first"), to: z.number().describe("last"), step })
  .describe("any number of the design, in steps");

const rowsAxis = z
  .strictObject({
    rows: z
      .union([z.string(), z.array(z.record(z.string(), z.unknown())).min(1).max(MOST_VALUES)])
      .describe("rows of paths with values; or the name of a CSV file whose head has the paths"),
  })
  .describe("several values at once, row by row; an empty cell leaves the design's own");

const filter = z.union([
  z.strictObject({
    figure: z.enum(FIGURES).describe(FIGURES_IN_WORDS),
    above: z.number().describe("left out above it"),
  }),
  z.strictObject({
    figure: z.enum(FIGURES).describe(FIGURES_IN_WORDS),
    below: z.number().describe("left out below it"),
  }),
]);

const family = z
  .strictObject({
    tileWidth: span.optional().describe("of a tile along the band, mm; the repeats are chosen for it"),
    bandWidth: span.optional().describe("of the band, mm"),
    rail: span.optional().describe("width of the rails as drawn, mm"),
    stretch: z.number().min(0).optional().describe("most stretch of a tile, without its sign: 0.03 is 3 %"),
    beadRatio: span.optional().describe("spacing over diameter of each run of beads, as laid out"),
    detail: z.number().positive().optional().describe("narrowest line of the drawn pattern, mm: at least"),
  })
  .describe(
    "what keeps the variants alike. Where a pattern's repeats are auto, they are chosen for each variant so that it keeps within; one that cannot is left out",
  );

const PLAN_DEFAULTS = {
  together: "grid",
  outputs: ["stl", "report", "picture"],
  piece: "master",
  pictureWidth: 480,
} as const;

export const planSchema = z.strictObject({
  $schema: z.string().optional().describe("address of this schema, for editors"),
  range: z.literal(PLAN_VERSION).describe("version of the plan"),
  base: z
    .union([z.string(), z.record(z.string(), z.unknown())])
    .describe("the design that is varied; or the name of its file, beside the plan"),
  vary: z
    .array(z.union([sizeAxis, materialAxis, valuesAxis, spanAxis, rowsAxis]))
    .min(1)
    .max(MOST_AXES)
    .describe(`what varies, 1 to ${MOST_AXES} axes; of a grid the last changes first`),
  together: z
    .union([
      z.enum(["grid", "paired"]),
      z.strictObject({
        sampled: z.int().min(1).describe("how many of the grid"),
        seed: z
          .int()
          .min(0)
          .max(2 ** 32 - 1)
          .default(0)
          .describe("which of them, 0 to 4294967295; default 0"),
      }),
    ])
    .default(PLAN_DEFAULTS.together)
    .describe("grid: every value with every other; paired: first with first; or some of the grid; default grid"),
  leaveOut: z.array(filter).max(50).default([]).describe("what is not made, by its figures; default none"),
  family: family.optional().describe("what keeps sizes alike; default nothing"),
  name: z
    .string()
    .min(1)
    .max(LONGEST_NAME)
    .optional()
    .describe("of a variant and its files, with {base}, {n}, {size}, {material} and names of axes; default all axes"),
  outputs: z
    .array(z.enum(Object.keys(OUTPUTS) as [OutputName, ...OutputName[]]))
    .min(1)
    .default([...PLAN_DEFAULTS.outputs])
    .describe("files of each variant; stones: the table of its stones; default stl, report, picture"),
  piece: z
    .enum(["master", "cast", "finished"])
    .default(PLAN_DEFAULTS.piece)
    .describe("which piece the meshes are; default master"),
  pictureWidth: z
    .int()
    .min(64)
    .max(4000)
    .default(PLAN_DEFAULTS.pictureWidth)
    .describe("of pictures, pixels, 64 to 4000; default 480"),
});

/** A plan with its defaults filled in. */
export type Plan = z.output<typeof planSchema>;

/** A plan as it is written. */
export type PlanInput = z.input<typeof planSchema>;

export type AxisSpec = Plan["vary"][number];
