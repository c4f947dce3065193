/**
 * Times the stages of a build one by one, each on what those before it made; the order is that of src/build.ts. The
 * files come after: a build does not write any.
 */

import { fitBand } from "../src/band/fit/fit-band.js";
import { makeBand } from "../src/band/make-band.js";
import { wrapSeat } from "../src/band/surface/wrap-seat.js";
import { finish } from "../src/base/pausing.js";
import { readDesign } from "../src/design/read.js";
import { checkSolid } from "../src/judge/gate.js";
import { gateRing } from "../src/judge/ring.js";
import { measureMesh } from "../src/measure/measure.js";
import type { Mesh } from "../src/mesh/mesh.js";
import { formats } from "../src/output/files/catalogue.js";
import { completePattern, noPattern } from "../src/pattern/pattern.js";
import { BUILD_DEFAULTS } from "../src/ring/build.js";
import { resolveSize } from "../src/size/size.js";
import { ACROSS_SHARE } from "../src/solids/facet-counts.js";
import { makeParts } from "../src/solids/parts.js";
import { manifoldKernel } from "../src/union/kernels/manifold.js";
import { uniteRing } from "../src/union/union.js";
import { drain } from "./drain.js";
import type { Effort } from "./effort.js";
import { type Timing, timeTask } from "./time-task.js";
import type { UnionParts } from "./unions.js";

export interface StageTimings {
  readonly timings: readonly Timing[];
  readonly parts: UnionParts;
  readonly mesh: Mesh;
}

export async function timeStages(document: unknown, effort: Effort): Promise<StageTimings> {
  const timings: Timing[] = [];
  const stage = async <Result>(name: string, run: () => Result | Promise<Result>): Promise<Result> => {
    const { timing, result } = await timeTask({ name, run }, effort);
    timings.push(timing);
    return result;
  };

  const design = await stage("document", () => readDesign(document));
  const { tolerance, beads: beadRuns, pattern: art } = design;
  const size = await stage("size", () => resolveSize(design.size));
  const boreRadius = size.diameter / 2;
  const fit = await stage("fit", () => fitBand(art, { profile: design.profile, boreRadius, tolerance, warn }));
  const width = fit?.bandWidth ?? design.profile.width;
  const profile = await stage("profile", () =>
    makeBand({ ...design.profile, width }, boreRadius, tolerance * ACROSS_SHARE),
  );
  const pattern = await stage("pattern", () =>
    art && fit ? finish(completePattern(art, beadRuns, fit, { profile, tolerance, warn })) : noPattern(beadRuns),
  );
  const wrap = await stage("wrap", () => wrapSeat(profile, fit, pattern.bodies.length > 0));
  const { kernel, maxBeads } = BUILD_DEFAULTS;
  const parts = await stage("solids", () =>
    finish(makeParts({ profile, wrap, pattern, beadRuns, tolerance, maxBeads, warn })),
  );
  const { mesh, check } = await stage("union", () =>
    uniteRing(parts, { kernel, fallback: manifoldKernel, check: (united) => checkSolid(united) }),
  );
  await stage("checks", () => gateRing(mesh, check, { genus: 1, balls: parts.spheres, tolerance, warn }));
  await stage("measure", () => measureMesh(mesh));
  for (const format of formats)
    await stage(`export ${format.name}`, () => drain(format.write(mesh, { name: design.name })));
  return { timings, parts: { ...parts, wrap }, mesh };
}

/** Warnings are for makers; the benchmark's designs have some on purpose. */
function warn(): void {}
