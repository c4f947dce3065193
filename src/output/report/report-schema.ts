/**
 * The report's schema: every field of what `make` reports, with its unit. Its type is `Report`, against which it is checked.
 *
 * The version counts up where a field goes or comes to mean something else; a new field leaves it as it is.
 */
import { z } from "zod";
import type { Report } from "./report.js";
import { REPORT_SCHEMA, REPORT_VERSION } from "./report-version.js";
import { bandFields, beadRun, fit } from "./schema-fields/band.js";
import { mark } from "./schema-fields/mark.js";
import { mm, point, range } from "./schema-fields/numbers.js";
import { allowances, print, sprue, weights } from "./schema-fields/piece.js";
import { stones } from "./schema-fields/stones.js";

/** Hexadecimal digits of a SHA-256 digest (FIPS 180-4). */
const SHA256_DIGITS = 64;

const problem = z.strictObject({
  code: z.string().describe("stable, kebab-case name of the kind of warning"),
  message: z.string().describe("one sentence that a maker understands"),
  path: z.string().optional().describe("where in the design document"),
  value: z.unknown().optional().describe("the value that was met"),
  allowed: z.string().optional().describe("what would be allowed, in words"),
  hint: z.string().optional().describe("how to mend it"),
  line: z.int().optional().describe("line in the document's text, from 1"),
  column: z.int().optional().describe("column in the document's text, from 1"),
});

const pair = z.strictObject({
  expected: z.number().describe("by the flat art"),
  built: z.number().describe("of the mesh"),
  bound: z.number().describe("the most by which they may differ"),
});

const mesh = z.strictObject({
  smallestAngle: z.number().describe("smallest angle of a triangle, degrees"),
  shortestEdge: mm("shortest edge"),
  decimation: z
    .strictObject({
      trianglesBefore: z.int().describe("triangles before decimation"),
      trianglesAfter: z.int().describe("triangles after it"),
      deviation: mm("no place of either surface is farther from the other than this"),
    })
    .nullable()
    .describe("what decimation took out; null where none was asked for or it failed"),
});

const file = z.strictObject({
  name: z.string().describe("name of the file, without its folder"),
  sha256: z.string().length(SHA256_DIGITS).describe("SHA-256 of its bytes, hexadecimal"),
});

export const reportSchema: z.ZodType<Report> = z
  .strictObject({
    $schema: z.literal(REPORT_SCHEMA).describe("name of this schema"),
    report: z.literal(REPORT_VERSION).describe(`version of the report; ${REPORT_VERSION}`),
    tool: z.string().describe("program and version that made it"),
    design: z
      .strictObject({
        sha256: z
          .string()
          .length(SHA256_DIGITS)
          .describe("SHA-256 of its canonical JSON (RFC 8785), defaults filled in, without $schema; hexadecimal"),
      })
      .describe("the design that it is of"),
    name: z.string().describe("name of the ring"),
    closed: z
      .boolean()
      .describe("whether the mesh passed the gate, in double precision and as a float32 file holds it"),
    triangles: z.int().describe("triangles of the mesh"),
    vertices: z.int().describe("vertices of the mesh"),
    components: z.int().describe("separate pieces; a ring is one"),
    genus: z.int().describe("handles of the solid"),
    genusExpected: z.int().describe("handles that the design implies: 1 for a band, 1 more for each hole"),
    volume: z.number().describe("mm³"),
    area: z.number().describe("mm²"),
    proof: z
      .strictObject({
        columns: z.int().describe("columns on the band that were compared place by place"),
        volume: pair.describe("volume, mm³"),
        relief: pair.describe("what stands higher than half of the relief, mm² of the flat pattern"),
      })
      .describe("the ring by the flat art alone, beside the one that was built"),
    centroid: point.describe("centre of the volume, mm"),
    bounds: range.describe("the box round the ring, mm"),
    ...bandFields,
    fit: fit.nullable().describe("how the tiles go round; null where there is no pattern"),
    beads: z.array(beadRun).describe("every bead run"),
    stones: stones.optional().describe("the stones; left out where there are none"),
    marks: z.array(mark).describe("lettering in the document's order, then the hallmark's field"),
    headroom: z
      .number()
      .nullable()
      .describe(
        "rail height minus the relief's highest point, mm; null without rails or relief, below 0 where it stands proud",
      ),
    mass: z.record(z.string(), z.number()).describe("material → g, by the mesh's volume and the alloy's density"),
    mesh: mesh.describe("how fine the mesh is"),
    warnings: z.array(problem).describe("what the maker should know; nothing was stopped"),
    detail: z.enum(["full", "draft"]).describe("how coarse the mesh was let be"),
    kernel: z.string().describe("name of the kernel whose result it is; none where nothing was united"),
    road: z.enum(["plain", "mirror", "turn", "whole"]).describe("the road by which the ring was united"),
    roadReason: z.string().describe("why that road, in words"),
    piece: z.enum(["finished", "cast", "master"]).describe("which piece the mesh is"),
    allowances: allowances.describe("sizes and weights of the finished piece, the casting and the master"),
    weights: weights.describe("weight and cost in every material"),
    print: print.describe("how the mesh lies for the printer"),
    sprue: sprue.nullable().describe("the drawn sprue at the casting's size; null where the mesh carries none"),
    files: z.array(file).optional().describe("the mesh files written with the report; left out where there are none"),
    timings: z
      .record(z.string(), z.number())
      .optional()
      .describe("phase of the build → milliseconds; only where make --timings asks, as it differs each time"),
  })
  .describe("what annulet make measured; lengths in mm, masses in g");
