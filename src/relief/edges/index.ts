/** The catalogue of edges. A new one is a file here and its line in this list. */
import { z } from "zod";
import type { EdgeForm } from "./edge-form.js";
import { scallopEdge } from "./scallop.js";
import { stepsEdge } from "./steps.js";
import { teethEdge } from "./teeth.js";
import { waveEdge } from "./wave.js";

export const EDGES = {
  scallop: scallopEdge,
  wave: waveEdge,
  teeth: teethEdge,
  steps: stepsEdge,
} as const satisfies Readonly<Record<string, EdgeForm>>;

export type EdgeName = keyof typeof EDGES;

export const EDGE_DEFAULTS = { side: "out", cornerAngle: 30 } as const;

export const edgeSchema = z
  .strictObject({
    form: z
      .enum(Object.keys(EDGES) as [EdgeName, ...EdgeName[]])
      .describe("scallop (round lobes), wave, teeth (points) or steps (square)"),
    width: z
      .number()
      .min(0.1)
      .max(50)
      .describe(
        "wanted width of one lobe along the outline, mm, 0.1 to 50; the real one is the nearest that comes out even",
      ),
    depth: z
      .number()
      .min(0.01)
      .max(10)
      .describe(
        "how far lobes stand out, mm; of scallops at most half their width, of waves and steps their width, of teeth twice",
      ),
    side: z
      .enum(["out", "in"])
      .default(EDGE_DEFAULTS.side)
      .describe("out: lobes are set on to the outline; in: they are bitten out of it; default out"),
    cornerAngle: z
      .number()
      .min(5)
      .max(175)
      .default(EDGE_DEFAULTS.cornerAngle)
      .describe("lobes begin and end where the outline turns by more than this, degrees, 5 to 175; default 30"),
  })
  .describe("lobes all along the region's outline, and so along both sides of a ribbon");

export type EdgeSpec = z.output<typeof edgeSchema>;
