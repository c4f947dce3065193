/**
 * The design document: everything that one ring is made from. Lengths in mm, angles in degrees.
 */
import { z } from "zod";
import { alloys } from "../measure/alloys/catalogue.js";
import { CASTING_DEFAULTS, castingSchema } from "./casting.js";
import { hallmarkSchema, letteringSchema } from "./marks.js";
import { costingSchema, materialsRule, ownAlloysSchema } from "./materials.js";
import { rulesSchema } from "./own-rules.js";
import { beadRunSchema } from "./pattern/bead-run.js";
import { patternSchema } from "./pattern/pattern.js";
import { printSchema } from "./print.js";
import { profileSchema } from "./profile/profile.js";
import { checkRuns } from "./run-rules.js";
import { sizeSchema } from "./size.js";
import { sprueSchema } from "./sprue.js";
import { ownGemsSchema } from "./stones/own-gems.js";
import { stonesSchema } from "./stones/stone-group.js";
import { DESIGN_VERSION } from "./versions.js";

/** Defaults of the document's own fields; lengths in mm. */
export const DESIGN_DEFAULTS = {
  name: "ring",
  tolerance: 0.01,
  material: "ag925",
  proud: false,
  casting: CASTING_DEFAULTS,
} as const;

/** Most bead runs a document may have; a chosen limit, above any hand-made design. */
const MAX_BEAD_RUNS = 200;

/** Most texts a document may have; a chosen limit. */
const MAX_LETTERING = 50;

export const designSchema = z
  .strictObject({
    $schema: z.string().optional().describe("address of this schema, for editors"),
    annulet: z.literal(DESIGN_VERSION).describe("version of the document"),
    name: z
      .string()
      .min(1)
      .max(200)
      .default(DESIGN_DEFAULTS.name)
      .describe("name of the ring, 1 to 200 characters; default ring"),
    size: sizeSchema,
    tolerance: z
      .number()
      .min(0.001)
      .max(0.2)
      .default(DESIGN_DEFAULTS.tolerance)
      .describe("farthest that flat facets lie off the true surface, mm, 0.001 to 0.2; default 0.01"),
    profile: profileSchema,
    pattern: patternSchema.optional().describe("what is drawn in a tile and how it repeats; default a plain band"),
    beads: z
      .array(beadRunSchema)
      .max(MAX_BEAD_RUNS)
      .default([])
      .describe(`bead runs, at most ${MAX_BEAD_RUNS}; default none`),
    lettering: z
      .array(letteringSchema)
      .max(MAX_LETTERING)
      .default([])
      .describe(`texts, at most ${MAX_LETTERING}; default none`),
    hallmark: hallmarkSchema.optional().describe("a field for a hallmark, clear of pattern and beads; default none"),
    stones: stonesSchema.default([]),
    gems: ownGemsSchema.optional(),
    material: z
      .string()
      .default(DESIGN_DEFAULTS.material)
      .describe("what it is weighed in: a symbol, built in or of alloys; default ag925")
      .meta({ examples: alloys.map((alloy) => alloy.symbol) }),
    alloys: ownAlloysSchema.default([]),
    rules: rulesSchema.optional().describe("limits for annulet check; default the general-casting set"),
    costing: costingSchema.optional().describe("prices, and what is melted with it"),
    casting: castingSchema.optional().describe("what the master is larger by; default none"),
    sprue: sprueSchema.optional().describe("a stem for casting, cut off later; default none"),
    print: printSchema.optional().describe("stance and layers in a printer; default as built"),
    proud: z.boolean().default(DESIGN_DEFAULTS.proud).describe("relief may stand above the rails; default false"),
  })
  .superRefine(checkRuns)
  .check(materialsRule);

/** A design as the pipeline takes it: every default filled in. */
export type Design = z.output<typeof designSchema>;

export type { DesignInput } from "./design-input.js";
