/**
 * The bodies of a design, by the first half of a build.
 */
import { BUILD_DEFAULTS } from "../src/ring/build.js";
import { layOut } from "../src/ring/lay-out.js";
import { Stages } from "../src/ring/stages.js";
import { makeParts, type Parts } from "../src/solids/parts.js";

export async function partsOf(document: unknown): Promise<Parts> {
  const stages = new Stages({});
  const { warn } = stages;
  const { design, profile, wrap, pattern, marks } = await layOut(document, stages);
  const { tolerance, beads: beadRuns } = design;
  return makeParts({ profile, wrap, pattern, marks, beadRuns, tolerance, maxBeads: BUILD_DEFAULTS.maxBeads, warn });
}
