/**
 * The whole pipeline: document → size → fit → profile → pattern → wrap → marks (all laid out flat) → solids → union →
 * checks → measure.
 */
import { checkSolid } from "./checks/gate.js";
import { checkHeadroom } from "./checks/headroom.js";
import { gateRing } from "./checks/ring.js";
import type { Design } from "./design/schema.js";
import type { BufferGeometry } from "./export/geometry.js";
import type { FileSource } from "./files.js";
import { layOut } from "./lay-out.js";
import { findAlloy } from "./measure/alloys/catalogue.js";
import { massOf } from "./measure/mass.js";
import { measureMesh } from "./measure/measure.js";
import type { Mesh } from "./mesh/mesh.js";
import { noticesOf } from "./report/notices.js";
import { makeReport, type Report } from "./report/report.js";
import { makeParts } from "./solids/parts.js";
import { MAX_BEADS } from "./solids/place-runs.js";
import { type StageOptions, Stages } from "./stages.js";
import type { Kernel } from "./union/kernels/kernel.js";
import { manifoldKernel } from "./union/kernels/manifold.js";
import { uniteRing } from "./union/union.js";
import { measureStretch } from "./wrap/stretch.js";

export interface BuildOptions extends StageOptions {
  /** Boolean library. Default manifold. It is also the fallback where another kernel's result does not close. */
  readonly kernel?: Kernel;
  /** Most beads that are built. Default 20 000. */
  readonly maxBeads?: number;
  /** The files that the design names, drawings and fonts: name → text or bytes, or a function that gives one. Default: none. */
  readonly files?: FileSource;
  /** Whether the result carries a three BufferGeometry too. Default false. */
  readonly geometry?: boolean;
}

/** Defaults of a build. */
export const BUILD_DEFAULTS = { kernel: manifoldKernel, maxBeads: MAX_BEADS, geometry: false } as const;

export interface BuildResult {
  /** The ring: one closed solid, mm. */
  readonly mesh: Mesh;
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
  const {
    kernel = BUILD_DEFAULTS.kernel,
    maxBeads = BUILD_DEFAULTS.maxBeads,
    geometry = BUILD_DEFAULTS.geometry,
  } = options;
  const stages = new Stages(options);
  const { warn } = stages;

  const { design, size, fit, width, profile, pattern, wrap, marks } = await layOut(document, stages, options.files);
  const { tolerance, beads: beadRuns } = design;
  const parts = await stages.run("solids", () =>
    makeParts({ profile, wrap, pattern, marks, beadRuns, tolerance, maxBeads, warn }),
  );
  const headroom = checkHeadroom(profile.rails?.top, parts.reliefRadius, design.proud);
  const union = await stages.run("union", () =>
    uniteRing(parts, {
      kernel,
      fallback: manifoldKernel,
      accept: (mesh) => checkSolid(mesh).closed,
      signal: options.signal,
    }),
  );
  const { mesh } = union;
  const genus = 1 + pattern.holes - parts.lostHoles;
  const check = await stages.run("checks", () => gateRing(mesh, { genus, balls: parts.spheres, tolerance, warn }));
  const measure = await stages.run("measure", () => measureMesh(mesh));

  for (const notice of noticesOf({ design, profile, union })) warn(notice);
  const report = makeReport({
    ...{ design, size, width, fit, headroom, union, check, measure, genusExpected: genus },
    lambda: measureStretch(wrap, pattern.height),
    runs: parts.runs,
    mass: massOf(measure.volume, findAlloy(design.material)),
    warnings: stages.warnings,
    timings: stages.timings,
  });
  stages.finish();
  return { mesh, report, design, ...(geometry ? { geometry: await toGeometry(mesh) } : {}) };
}

/** Loads three only where a geometry is asked for. */
async function toGeometry(mesh: Mesh): Promise<BufferGeometry> {
  const { toBufferGeometry } = await import("./export/geometry.js");
  return toBufferGeometry(mesh);
}
