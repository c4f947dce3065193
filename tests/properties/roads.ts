/** The roads by which a design's parts become one, for tests of each by itself. */

import type { Sector } from "../../src/base/math/round.js";
import { finish } from "../../src/base/pausing.js";
import { checkSolid } from "../../src/judge/gate.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { openInside } from "../../src/ring/open-ring.js";
import type { Parts } from "../../src/solids/parts.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { partCoincident } from "../../src/union/part-coincident.js";
import { dropSpecks } from "../../src/union/specks.js";
import { takeSteps } from "../../src/union/take-steps.js";
import { tidyMesh } from "../../src/union/tidy-mesh.js";
import { uniteRing } from "../../src/union/union.js";
import { makeUnit } from "../../src/union/unit.js";
import { FILES } from "./road-designs.js";

/** Most beads of a design, so that a thousand designs take minutes. */
const MAX_BEADS = 2500;

/** Takes a design as far as its parts. */
export async function partsOf(document: unknown): Promise<Parts> {
  const { answers } = await openInside(document, { files: FILES, maxBeads: MAX_BEADS }).ask(["parts"]);
  return answers.parts;
}

const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };

export const unite = (parts: Parts) => uniteRing(parts, options);

/** Without the symmetry: the whole ring in one union. */
export const uniteWhole = (parts: Parts) => uniteRing({ ...parts, symmetry: undefined }, options);

/** Why a sector gave no ring, in a few words; undefined where it gave one. */
export async function failureOn(parts: Parts, sector: Sector): Promise<string | undefined> {
  if (parts.symmetry === undefined) return "no symmetry";
  const alike = parts.steps.filter(({ scope }) => scope === "unit");
  try {
    const united = await takeSteps(manifoldKernel, alike, { sector });
    const { mesh } = dropSpecks(turnRound(finish(makeUnit(united, sector, parts.symmetry)), parts.symmetry.units));
    const tried = [mesh, partCoincident(tidyMesh(mesh))].map((one) => checkSolid(one));
    if (tried.some(({ closed }) => closed)) return undefined;
    const [{ faults, float32 }] = tried;
    const told = [...faults, ...float32.faults].map(
      ({ code, count, places }) => `${count} ${code} ${JSON.stringify(places[0])}`,
    );
    return told.join(", ");
  } catch (error) {
    return error instanceof Error
      ? `${error.message} ${"value" in error ? JSON.stringify(error.value) : ""}`
      : String(error);
  }
}
