/** The catalogue of motifs. A new one is a file here, and a line in the list. */
import { z } from "zod";
import type { ShapeSpec } from "../shapes/shape-spec.js";
import { lozenge } from "./lozenge.js";
import type { AnyMotif, MotifFrame } from "./motif.js";

export const motifs: readonly AnyMotif[] = [lozenge];

/** A motif as a document calls it: its name and its parameters, every default filled in. */
export interface MotifSpec {
  readonly name: string;
  readonly [parameter: string]: unknown;
}

const named = motifs.map(({ name, summary, parameters }) =>
  parameters.extend({ name: z.literal(name) }).describe(summary),
);

export const motifSchema = z
  .discriminatedUnion("name", named as [(typeof named)[number], ...typeof named])
  .describe(
    `a motif of the catalogue by its name, with its parameters: ${motifs.map(({ name }) => name).join(", ")}`,
  ) as unknown as z.ZodType<MotifSpec, MotifSpec>;

/** The motif as a shape, in tile units. */
export function drawMotif({ name, ...parameters }: MotifSpec, frame: MotifFrame): ShapeSpec {
  const motif = motifs.find((one) => one.name === name) as AnyMotif;
  return motif.draw(parameters as never, frame);
}
