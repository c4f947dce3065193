/** Takes a design as far as its bodies, for tests of what they are before they are united. */

import type { Band } from "../../src/band/band.js";
import type { Fit } from "../../src/band/fit/fit.js";
import { fitBand } from "../../src/band/fit/fit-band.js";
import { makeBand } from "../../src/band/make-band.js";
import type { BandSurface } from "../../src/band/surface/surface.js";
import { wrapSeat } from "../../src/band/surface/wrap-seat.js";
import type { Warning } from "../../src/base/errors.js";
import { finish } from "../../src/base/pausing.js";
import { readDesign } from "../../src/design/read.js";
import type { Design } from "../../src/design/schema.js";
import type { Pattern } from "../../src/pattern/laid-out.js";
import { completePattern, noPattern } from "../../src/pattern/pattern.js";
import { seat } from "../../src/ring/steps/flat.js";
import { resolveSize } from "../../src/size/size.js";
import { ACROSS_SHARE } from "../../src/solids/facet-counts.js";
import { makeParts, type Parts } from "../../src/solids/parts.js";
import { bodiesOfSteps, type StepBodies } from "./steps.js";

export interface Bodies {
  readonly design: Design;
  readonly fit: Fit | undefined;
  readonly profile: Band;
  readonly pattern: Pattern;
  readonly wrap: BandSurface;
  /** With the bodies of the whole ring. */
  readonly parts: Parts & StepBodies;
  readonly warnings: readonly Warning[];
}

export function bodiesOf(document: unknown, maxBeads = 20_000): Bodies {
  const warnings: Warning[] = [];
  const warn = (warning: Warning) => {
    warnings.push(warning);
  };
  const design = readDesign(document);
  const { tolerance, beads: beadRuns } = design;
  const boreRadius = resolveSize(design.size).diameter / 2;
  const fit = fitBand(design.pattern, { profile: design.profile, boreRadius, tolerance, warn });
  const width = fit?.bandWidth ?? design.profile.width;
  const profile = makeBand({ ...design.profile, width }, boreRadius, tolerance * ACROSS_SHARE);
  const facts = seat({ design, keepsSize: design.pattern?.fit.taper === "keep", profile });
  const pattern =
    design.pattern && fit
      ? finish(completePattern(design.pattern, beadRuns, fit, { profile: facts, tolerance, warn }))
      : noPattern(beadRuns);
  const wrap = wrapSeat(profile, fit, pattern.bodies.length > 0, facts.lengths !== undefined);
  const parts = finish(makeParts({ profile, wrap, pattern, beadRuns, tolerance, maxBeads, warn }));
  return { design, fit, profile, pattern, wrap, parts: { ...parts, ...bodiesOfSteps(parts.steps) }, warnings };
}
