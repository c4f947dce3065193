/**
 * The edge's part of a region: lobes along its outline.
 */
import { z } from "zod";

/** Every form of edge. A new one is a name here and its file in relief/edges. */
const edgeNames = ["scallop", "wave", "teeth", "steps"] as const;

export type EdgeName = (typeof edgeNames)[number];

const EDGE_DEFAULTS = { side: "out", cornerAngle: 30 } as const;

export const edgeSchema = z
  .strictObject({
    form: z.enum(edgeNames).describe("scallop: round lobes; teeth: points; steps: square"),
    width: z.number().min(0.1).max(50).describe("width of a lobe, mm, 0.1 to 50; the nearest that comes out even"),
    depth: z
      .number()
      .min(0.01)
      .max(10)
      .describe("how far lobes stand out, mm, to half their width (scallop), once (wave, steps), twice (teeth)"),
    side: z
      .enum(["out", "in"])
      .default(EDGE_DEFAULTS.side)
      .describe("lobes are set on the outline or bitten out of it; default out"),
    cornerAngle: z
      .number()
      .min(5)
      .max(175)
      .default(EDGE_DEFAULTS.cornerAngle)
      .describe("lobes end where it turns by more than this, degrees, 5 to 175; default 30"),
  })
  .describe("lobes along the outline, both sides of a ribbon")
  .meta({ id: "edge" });

export type EdgeSpec = z.output<typeof edgeSchema>;
