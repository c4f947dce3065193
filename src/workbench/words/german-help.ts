/**
 * German for the descriptions of the document's schema. The keys are the English descriptions without ranges and defaults,
 * which `say-help.ts` takes out: the page shows those beside a field.
 */
import { bandHelp } from "./help/band.js";
import { castingHelp } from "./help/casting.js";
import { motifsHelp } from "./help/motifs.js";
import { patternHelp } from "./help/pattern.js";
import { regionsHelp } from "./help/regions.js";
import { shapesHelp } from "./help/shapes.js";
import { stonesHelp } from "./help/stones.js";
import type { Phrases } from "./phrasebook.js";

export const germanHelp: Phrases = {
  ...bandHelp,
  ...patternHelp,
  ...castingHelp,
  ...shapesHelp,
  ...motifsHelp,
  ...regionsHelp,
  ...stonesHelp,
};
