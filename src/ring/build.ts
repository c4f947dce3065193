/**
 * The whole pipeline: document → size → fit → profile → pattern → wrap → marks (all laid out flat) → solids → union →
 * checks → measure.
 */

import { measureStretch } from "../band/surface/stretch.js";
import type { FileSource } from "../base/files.js";
import type { Bead } from "../beads/bead.js";
import { MAX_BEADS } from "../beads/place-runs.js";
import { addSprue, type SprueReport } from "../casting/add-sprue.js";
import type { Finishing } from "../casting/allowances/allowance.js";
import { applyCasting, type Built, type PieceTime } from "../casting/apply-casting.js";
import { materialsOf } from "../design/materials.js";
import type { PrintSettings } from "../design/print-settings.js";
import type { Design } from "../design/schema.js";
import { decimateSolid, requireDeviation } from "../judge/decimate-solid.js";
import { assertSolid, checkSolid } from "../judge/gate.js";
import { checkHeadroom } from "../judge/headroom.js";
import { gateRing } from "../judge/ring.js";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { massOf } from "../measure/mass.js";
import { measureMesh } from "../measure/measure.js";
import type { Mesh } from "../mesh/mesh.js";
import type { BufferGeometry } from "../output/files/geometry.js";
import { printFigures } from "../output/print/figures.js";
import { layDown } from "../output/print/lay-down.js";
import { printSettings } from "../output/print/settings.js";
import { noticesOf } from "../output/report/notices.js";
import { type FinishedReport, makeReport, type Report } from "../output/report/report.js";
import type { Detail } from "../solids/detail.js";
import { makeParts } from "../solids/parts.js";
import type { Kernel } from "../union/kernels/kernel.js";
import { manifoldKernel } from "../union/kernels/manifold.js";
import { uniteRing } from "../union/union.js";
import { type Layout, layOut } from "./lay-out.js";
import { type StageOptions, Stages } from "./stages.js";

export interface BuildOptions extends StageOptions {
  /** Boolean library. Default manifold. It is also the fallback where another kernel's result does not close. */
  readonly kernel?: Kernel;
  /** Most beads that are built. Default 20 000. */
  readonly maxBeads?: number;
  /** The files that the design names, drawings and fonts: name → text or bytes, or a function that gives one. Default: none. */
  readonly files?: FileSource;
  /** Which piece the mesh is: the master with all casting allowances, the casting, or the finished piece. Default master. */
  readonly piece?: PieceTime;
  /**
   * How far the surface may lie from what was built, mm, 0 or more, so that it takes fewer triangles. Default 0: it stays
   * as it was built.
   */
  readonly decimate?: number;
  /** `draft` for looking at a design while it changes: a coarser mesh of the same ring, closed too. Default full. */
  readonly detail?: Detail;
  /** How the mesh is turned for the printer, and what it is judged by, in place of the document's `print`. Default: that. */
  readonly print?: Partial<PrintSettings>;
  /** Whether the result carries a three BufferGeometry too. Default false. */
  readonly geometry?: boolean;
}

/** Defaults of a build. */
export const BUILD_DEFAULTS = {
  kernel: manifoldKernel,
  maxBeads: MAX_BEADS,
  piece: "master",
  decimate: 0,
  detail: "full",
  geometry: false,
} as const;

export interface BuildResult {
  /** The ring: one closed solid, mm. Without casting allowances master, casting and finished piece are one. */
  readonly mesh: Mesh;
  /** Of the finished piece; what the mesh measures is in its `allowances`. */
  readonly report: Report;
  /** The document with its defaults filled in. */
  readonly design: Design;
  /** Only where asked for. */
  readonly geometry?: BufferGeometry;
}

/**
 * Builds a ring from a design.
 *
 * @param document the design document: an object, or JSON text
 * @throws AnnuletError with everything that is wrong in the document; `not-closed` where the ring fails the gate;
 *   the signal's reason where it was aborted
 */
export async function build(document: unknown, options: BuildOptions = {}): Promise<BuildResult> {
  const { piece = BUILD_DEFAULTS.piece, geometry = BUILD_DEFAULTS.geometry } = options;
  const finished = await buildPiece(document, options);
  const settings = printSettings(options.print, printSettings(finished.design.print));
  // The casting before it is finished is a ring of its own sizes.
  const warnings = [...finished.report.warnings];
  const buildCast = async (finishing: Finishing) => {
    const cast = await buildPiece(document, { ...options, onProgress: undefined }, finishing);
    warnings.push(...cast.report.warnings.filter(({ code }) => warnings.every((known) => known.code !== code)));
    return cast;
  };
  const { design } = finished;
  let sprue: SprueReport | null = null;
  const dress = async ({ mesh, profile }: Built): Promise<Mesh> => {
    if (design.sprue === undefined) return mesh;
    const { kernel = BUILD_DEFAULTS.kernel, signal } = options;
    const metal = findAlloy(design.material, { alloys: materialsOf(design) });
    const sprued = await addSprue(mesh, design.sprue, metal, { profile, tolerance: design.tolerance, kernel, signal });
    sprue = sprued.report;
    return sprued.mesh;
  };
  const { mesh: upright, allowances, weights } = await applyCasting(finished, buildCast, piece, dress);
  const mesh = turn(upright, settings);
  const print = printFigures(mesh, settings);
  const report: Report = { ...finished.report, piece, allowances, weights, print, sprue, warnings };
  options.onProgress?.({ stage: "done", share: 1 });
  return { mesh, report, design, ...(geometry ? { geometry: await toGeometry(mesh) } : {}) };
}

/** A ring as it was built, with what was laid out for it. */
export interface Piece extends Layout {
  readonly mesh: Mesh;
  readonly beads: readonly Bead[];
  readonly volume: number;
  readonly report: FinishedReport;
}

/** Builds a ring without scaling it, finished or with what finishing takes off. */
export async function buildPiece(document: unknown, options: BuildOptions, finishing?: Finishing): Promise<Piece> {
  const { kernel = BUILD_DEFAULTS.kernel, maxBeads = BUILD_DEFAULTS.maxBeads } = options;
  const { detail = BUILD_DEFAULTS.detail } = options;
  const deviation = requireDeviation(options.decimate ?? BUILD_DEFAULTS.decimate);
  const stages = new Stages(options);
  const { warn } = stages;

  const layout = await layOut(document, stages, options.files, finishing);
  const { design, size, fit, width, profile, pattern, wrap, marks } = layout;
  const { tolerance, beads: beadRuns } = design;
  const parts = await stages.run("solids", () =>
    makeParts({ profile, wrap, pattern, marks, beadRuns, tolerance, maxBeads, detail, warn }),
  );
  const headroom = checkHeadroom(profile.rails?.top, parts.reliefRadius, design.proud);
  const union = await stages.run("union", () =>
    uniteRing(parts, {
      kernel,
      fallback: manifoldKernel,
      check: checkSolid,
      signal: options.signal,
    }),
  );
  const { mesh, decimation } =
    deviation === 0
      ? { mesh: union.mesh, decimation: undefined }
      : await stages.run("decimate", () => {
          return decimateSolid(union.mesh, { deviation, accept, warn, signal: options.signal });
        });
  const genus = 1 + pattern.holes - parts.lostHoles;
  const check = await stages.run("checks", () =>
    gateRing(mesh, decimation === undefined ? union.check : checkSolid(mesh), {
      genus,
      balls: parts.spheres,
      tolerance,
      warn,
    }),
  );
  const measure = await stages.run("measure", () => measureMesh(mesh));

  for (const notice of noticesOf({ profile, union })) warn(notice);
  const report = makeReport({
    ...{ design, detail, size, width, fit, headroom, union, decimation, check, measure, genusExpected: genus },
    lambda: measureStretch(wrap, pattern.height),
    runs: parts.runs,
    mass: massOf(measure.volume, findAlloy(design.material, { alloys: materialsOf(design) })),
    warnings: stages.warnings,
    timings: stages.timings,
  });
  return { ...layout, mesh, beads: parts.spheres, volume: measure.volume, report };
}

const accept = (mesh: Mesh) => checkSolid(mesh).closed;

/** Turned, its points round to others in float32 than those that passed the gate before. */
function turn(mesh: Mesh, settings: PrintSettings): Mesh {
  const turned = layDown(mesh, settings);
  if (turned !== mesh) assertSolid(turned);
  return turned;
}

/** Loads three only where a geometry is asked for. */
async function toGeometry(mesh: Mesh): Promise<BufferGeometry> {
  const { toBufferGeometry } = await import("../output/files/geometry.js");
  return toBufferGeometry(mesh);
}
