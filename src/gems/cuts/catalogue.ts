/**
 * The cuts. A new one is one file and one line here; its name stands in `stone.ts`.
 */
import { nearest } from "../../base/errors/nearest.js";
import { safeText } from "../../base/errors/safe-text.js";
import { AnnuletError } from "../../base/errors.js";
import type { Cut } from "../cut.js";
import { CUT_NAMES } from "../stone.js";
import { baguette } from "./baguette.js";
import { cabochon } from "./cabochon.js";
import { emerald } from "./emerald.js";
import { marquise } from "./marquise.js";
import { oval } from "./oval.js";
import { pear } from "./pear.js";
import { princess } from "./princess.js";
import { round } from "./round.js";
import { squareStep } from "./square-step.js";
import { taperedBaguette } from "./tapered-baguette.js";

/** Every cut, in the order of tables. */
export const cuts: readonly Cut[] = [
  round,
  oval,
  marquise,
  pear,
  princess,
  squareStep,
  emerald,
  baguette,
  taperedBaguette,
  cabochon,
];

/**
 * The cut of a name.
 *
 * @throws AnnuletError `cut-unknown`, naming the nearest
 */
export function findCut(name: string, path = "cut"): Cut {
  const found = cuts.find((cut) => cut.name === name);
  if (found) return found;
  throw new AnnuletError({
    code: "cut-unknown",
    message: `There is no cut ${safeText(name)}.`,
    path,
    value: name,
    allowed: CUT_NAMES.join(", "),
    hint: nearest(name, CUT_NAMES),
  });
}
