/**
 * The whole pipeline: document → size → fit → profile → pattern → wrap → solids → union → checks → measure.
 */
import { checkSolid } from "./checks/gate.js";
import { checkHeadroom } from "./checks/headroom.js";
import { gateRing } from "./checks/ring.js";
import { readDesign } from "./design/read.js";
import type { Design } from "./design/schema.js";
import type { BufferGeometry } from "./export/geometry.js";
import { findAlloy } from "./measure/alloys/catalogue.js";
import { massOf } from "./measure/mass.js";
import { measureMesh } from "./measure/measure.js";
import type { Mesh } from "./mesh/mesh.js";
import { completePattern, noPattern } from "./pattern/pattern.js";
import { buildProfile } from "./profile/profile.js";
import { noticesOf } from "./report/notices.js";
import { makeReport, type Report } from "./report/report.js";
import { resolveSize } from "./sizing/size.js";
import { ACROSS_SHARE } from "./solids/facets.js";
import { makeParts } from "./solids/parts.js";
import { type StageOptions, Stages } from "./stages.js";
import type { Kernel } from "./union/kernels/kernel.js";
import { manifoldKernel } from "./union/kernels/manifold.js";
import { uniteRing } from "./union/union.js";
import { fitBand } from "./wrap/fit-band.js";
import { measureStretch } from "./wrap/stretch.js";
import { wrapSeat } from "./wrap/wrap-seat.js";

export interface BuildOptions extends StageOptions {
  /** Boolean library. Default manifold. It is also the fallback where another kernel's result does not close. */
  readonly kernel?: Kernel;
  /** Most beads that are built. Default 20 000. */
  readonly maxBeads?: number;
  /** Whether the result carries a three BufferGeometry too. Default false. */
  readonly geometry?: boolean;
}

/** Defaults of a build. 20 000 beads is a chosen limit: over ten times what the richest demo band carries. */
export const BUILD_DEFAULTS = { kernel: manifoldKernel, maxBeads: 20_000, geometry: false } as const;

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

  const design = await stages.run("document", () => readDesign(document));
  const { tolerance, beads: beadRuns, pattern: art } = design;
  const size = await stages.run("size", () => resolveSize(design.size));
  const boreRadius = size.diameter / 2;
  const fit = await stages.run("fit", () => fitBand(art, { profile: design.profile, boreRadius, tolerance, warn }));
  const width = fit?.bandWidth ?? design.profile.width;
  const profile = await stages.run("profile", () =>
    buildProfile({ ...design.profile, width }, boreRadius, tolerance * ACROSS_SHARE),
  );
  const pattern = await stages.run("pattern", () =>
    art && fit ? completePattern(art, beadRuns, fit, { profile, tolerance, warn }) : noPattern(beadRuns),
  );
  const wrap = await stages.run("wrap", () => wrapSeat(profile, fit, pattern.reliefs.length > 0));
  const parts = await stages.run("solids", () =>
    makeParts({ profile, wrap, pattern, beadRuns, tolerance, maxBeads, warn }),
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
  const check = await stages.run("checks", () => gateRing(mesh, { genus: 1, balls: parts.spheres, tolerance, warn }));
  const measure = await stages.run("measure", () => measureMesh(mesh));

  for (const notice of noticesOf({ design, profile, union })) warn(notice);
  const report = makeReport({
    ...{ design, size, width, fit, headroom, union, check, measure, genusExpected: 1 },
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
