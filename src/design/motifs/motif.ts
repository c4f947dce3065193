/**
 * A motif as a document calls it. A new motif is a file beside this and its two lines in catalogue.ts.
 */
import { z } from "zod";
import { motifFacts } from "./catalogue.js";
import type { MotifFacts } from "./facts.js";

/** A motif as a document calls it: its name and its parameters, every default filled in. */
export interface MotifSpec {
  readonly name: string;
  readonly [parameter: string]: unknown;
}

const facts: readonly MotifFacts[] = motifFacts;

const named = facts.map(({ name, summary, parameters }) =>
  parameters.extend({ name: z.literal(name) }).describe(summary),
);

export const motifSchema = z
  .discriminatedUnion("name", named as [(typeof named)[number], ...typeof named])
  .describe("a motif with its parameters")
  .meta({ id: "motif" }) as unknown as z.ZodType<MotifSpec, MotifSpec>;
