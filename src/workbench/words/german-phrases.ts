/**
 * German for the sentences of the library, by their English form: messages of problems, what they
 * allow, how to mend them, findings, cautions, names.
 * The terms stand in `german-problems.ts`, the form of blanks in `phrasebook.ts`.
 */
import type { Phrases } from "./phrasebook.js";
import { artPhrases } from "./phrases/art.js";
import { bandPhrases } from "./phrases/band.js";
import { beadPhrases } from "./phrases/beads.js";
import { castingPhrases } from "./phrases/casting.js";
import { cautionPhrases } from "./phrases/cautions.js";
import { commonPhrases } from "./phrases/common.js";
import { documentPhrases } from "./phrases/document.js";
import { findingPhrases } from "./phrases/findings.js";
import { gemPhrases } from "./phrases/gems.js";
import { namePhrases } from "./phrases/names.js";
import { outputPhrases } from "./phrases/output.js";
import { reliefPhrases } from "./phrases/relief.js";
import { betweenPhrases } from "./phrases/rules-between.js";
import { solidPhrases } from "./phrases/solid.js";
import { stonePhrases } from "./phrases/stones.js";
import { svgPhrases } from "./phrases/svg.js";

export const germanPhrases: Phrases = {
  ...commonPhrases,
  ...documentPhrases,
  ...betweenPhrases,
  ...bandPhrases,
  ...artPhrases,
  ...svgPhrases,
  ...reliefPhrases,
  ...beadPhrases,
  ...gemPhrases,
  ...castingPhrases,
  ...solidPhrases,
  ...stonePhrases,
  ...outputPhrases,
  ...findingPhrases,
  ...namePhrases,
  ...cautionPhrases,
};
