/**
 * The report of a build: what a workshop reads, as plain JSON.
 */

import type { Fit } from "../../band/fit/fit.js";
import type { StretchReport } from "../../band/surface/stretch.js";
import type { Warning } from "../../base/errors.js";
import type { Point3 } from "../../base/math/point.js";
import type { Timings } from "../../base/phases.js";
import { degrees } from "../../base/units.js";
import { VERSION } from "../../base/version.js";
import type { BeadRunReport } from "../../beads/bead-report.js";
import type { SprueReport } from "../../casting/add-sprue.js";
import type { Allowances } from "../../casting/allowances/columns.js";
import type { Design } from "../../design/schema.js";
import type { Decimation } from "../../judge/decimate-solid.js";
import type { SolidCheck } from "../../judge/gate.js";
import type { Proof, ProofFigure } from "../../judge/proof/prove.js";
import type { MarkReport } from "../../marks/mark-report.js";
import type { Measure } from "../../measure/measure.js";
import type { WeightTable } from "../../measure/weights/weight-table.js";
import type { ResolvedSize } from "../../size/size.js";
import type { Detail } from "../../solids/detail.js";
import type { StonesReport } from "../../stones/stone-report.js";
import type { UnionResult } from "../../union/union.js";
import type { PrintFigures } from "../print/figures.js";
import type { BandSizes } from "./band-sizes.js";
import { REPORT_SCHEMA, REPORT_VERSION } from "./report-version.js";

/** Everything measured on one ring. Lengths in mm, masses in g. */
export interface Report extends FinishedReport {
  /** Which piece the mesh is; all but `allowances` and `print` is of the finished one. */
  readonly piece: keyof Pick<Allowances, "finished" | "cast" | "master">;
  /** Sizes and weights of the finished piece, the casting and the master. */
  readonly allowances: Allowances;
  /** Weight and cost in every material. */
  readonly weights: WeightTable;
  /** How the mesh lies for the printer: of the mesh as it is written. */
  readonly print: PrintFigures;
  /** The drawn sprue at the casting's size; null where the mesh carries none. No other figure of the ring counts it. */
  readonly sprue: SprueReport | null;
  /** The mesh files that were written with it; left out where none were, and by the library, which writes no files. */
  readonly files?: readonly ReportedFile[];
  /**
   * Phase of the build → milliseconds, last of all: only where `make --timings` asks for it, since equal designs have equal
   * reports otherwise. The library has them beside the report.
   */
  readonly timings?: Timings;
}

/** A file that a report stands beside. */
export interface ReportedFile {
  /** Without its folder. */
  readonly name: string;
  /** SHA-256 (FIPS 180-4) of its bytes, 64 hexadecimal digits. */
  readonly sha256: string;
}

/** What is measured on the finished piece. */
export interface FinishedReport {
  /** Name of the schema that it holds to, `reportJsonSchema()`. */
  readonly $schema: typeof REPORT_SCHEMA;
  /** Version of the report. */
  readonly report: typeof REPORT_VERSION;
  /** Program and version that made it. */
  readonly tool: string;
  /** The design that it is of, its defaults filled in. */
  readonly design: {
    /** SHA-256 (FIPS 180-4) of its canonical JSON (RFC 8785) without `$schema`, 64 hexadecimal digits. */
    readonly sha256: string;
  };
  readonly name: string;
  /** Whether the mesh passed the gate, in double precision and as a float32 file holds it. */
  readonly closed: boolean;
  readonly triangles: number;
  readonly vertices: number;
  readonly components: number;
  /** Handles of the solid, and how many the design implies: 1 for a band, 1 more for each hole. */
  readonly genus: number;
  readonly genusExpected: number;
  /** mm³ */
  readonly volume: number;
  /** mm² */
  readonly area: number;
  /** Whether it is the ring that was drawn: figures from the flat art alone, beside those of the mesh. */
  readonly proof: ProofReport;
  readonly centroid: Point3;
  readonly bounds: { readonly min: Point3; readonly max: Point3 };
  readonly size: ResolvedSize;
  /** Band width and thickness as built, mm: the width differs from the document's where the tile is held, the thickness where the section's highest point lies lower. */
  readonly band: BandSizes;
  /** null where there is no pattern. */
  readonly fit: FitReport | null;
  readonly beads: readonly BeadRunReport[];
  /** Left out where there are none. */
  readonly stones?: StonesReport;
  /** Lettering in the document's order, then the hallmark's field. */
  readonly marks: readonly MarkReport[];
  /** Rail height minus the relief's highest point, mm; null without rails or relief. Negative: it stands proud. */
  readonly headroom: number | null;
  /** Material → g, by the mesh's volume and the alloy's density. */
  readonly mass: Readonly<Record<string, number>>;
  readonly mesh: {
    /** Smallest angle of a triangle, degrees, and shortest edge, mm. */
    readonly smallestAngle: number;
    readonly shortestEdge: number;
    /** What decimation took out, and how far the surface moved at most, mm; null where none was asked for or it failed. */
    readonly decimation: Decimation | null;
  };
  readonly warnings: readonly Warning[];
  /** How coarse the mesh was let be. */
  readonly detail: Detail;
  /** The kernel whose result it is, the road that was taken (`plain`, `mirror`, `turn`, `whole`), and why. */
  readonly kernel: string;
  readonly road: string;
  readonly roadReason: string;
}

/** What the flat art says and what was built. A ring for which they differ by more than their bound is an error. */
export interface ProofReport {
  /** Columns on which both were compared. */
  readonly columns: number;
  /** mm³ */
  readonly volume: ProofFigure;
  /** What stands higher than half of the relief, mm² of the flat pattern. */
  readonly relief: ProofFigure;
}

/** The fit with the stretch of the wrapped art. */
export interface FitReport extends Fit {
  /** λu along the band, smallest and largest, on the seat and at the relief's top: 1 is true. */
  readonly lambda: StretchReport;
}

/** What the stages of a build came to, with what was said of them. */
export interface Findings extends Facts {
  readonly warnings: readonly Warning[];
  /** Of the design, as `FinishedReport.design`. */
  readonly sha256: string;
}

/** What the stages of a build came to. */
export interface Facts {
  readonly design: Pick<Design, "name" | "material">;
  readonly detail: Detail;
  readonly size: ResolvedSize;
  readonly band: BandSizes;
  readonly fit: Fit | undefined;
  readonly lambda: StretchReport;
  readonly runs: readonly BeadRunReport[];
  readonly stones: StonesReport | undefined;
  readonly marks: readonly MarkReport[];
  readonly headroom: number | undefined;
  readonly union: Pick<UnionResult<SolidCheck, Proof>, "kernel" | "road" | "roadReason" | "proof">;
  readonly decimation: Decimation | undefined;
  readonly check: SolidCheck;
  readonly genusExpected: number;
  readonly measure: Measure;
  readonly mass: number;
}

export function makeReport(found: Findings): FinishedReport {
  const { design, check, measure, fit } = found;
  return {
    $schema: REPORT_SCHEMA,
    report: REPORT_VERSION,
    tool: `annulet ${VERSION}`,
    design: { sha256: found.sha256 },
    name: design.name,
    closed: check.closed,
    triangles: check.triangles,
    vertices: check.vertices,
    components: check.components,
    genus: check.genus as number,
    genusExpected: found.genusExpected,
    volume: measure.volume,
    area: measure.area,
    proof: proofReport(found.union.proof),
    centroid: measure.centroid,
    bounds: measure.bounds,
    size: found.size,
    band: found.band,
    fit: fit === undefined ? null : { ...fit, lambda: found.lambda },
    beads: found.runs,
    ...(found.stones === undefined ? {} : { stones: found.stones }),
    marks: found.marks,
    headroom: found.headroom ?? null,
    mass: { [design.material]: found.mass },
    mesh: {
      smallestAngle: degrees(check.smallestAngle ?? Number.NaN),
      shortestEdge: check.shortestEdge ?? Number.NaN,
      decimation: found.decimation ?? null,
    },
    warnings: found.warnings,
    detail: found.detail,
    kernel: found.union.kernel,
    road: found.union.road,
    roadReason: found.union.roadReason,
  };
}

/** Every ring that passes the gate has been proved. */
function proofReport(proof: Proof | undefined): ProofReport {
  if (proof === undefined) throw new Error("a ring is proved before it is reported");
  const { columns, volume, relief } = proof;
  return { columns, volume, relief };
}
